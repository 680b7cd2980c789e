using System.Globalization;
using System.Text.RegularExpressions;
using Analytics.Quantities;
using Analytics.Season.Checks;

namespace Analytics.Season.Columns;

/// <summary>Reads the head of a timing-gate column: <c>t_10yd_s</c>.</summary>
internal static partial class GateHead
{
    /// <summary>Highest speed allowed between two gates, m/s: a little over the fastest 20 m section of a 100 m race (60 to 80 m in 1.61 s, Berlin 2009: 12.42 m/s).</summary>
    public const double HighestSpeed = 12.5;

    /// <summary>Lowest mean speed allowed between two gates, m/s; common practice, no source.</summary>
    public const double LowestSpeed = 1.5;

    /// <summary>The gate a normalised head names; null when it is no gate with units.</summary>
    public static QuantityColumn? Read(string head)
    {
        var match = Gate().Match(head);
        if (!match.Success || !double.TryParse(match.Groups["d"].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)) return null;
        var metres = number * Length.Units.Single(u => u.Symbol == match.Groups["u"].Value).ToSi;
        if (metres is < 0.5 or > 500) return null;
        var unit = Duration.Units.Single(u => u.Symbol == match.Groups["t"].Value);
        var other = Duration.Units.Single(u => u.Symbol == (unit.Symbol == "s" ? "ms" : "s"));
        // Half the shortest time still passes here, so that a time going backwards can be told as such.
        return new QuantityColumn(head[..head.LastIndexOf('_')], [unit, other], FastestRun.ShortestTime(metres) / 2, Slowest(metres)) { Gate = metres };
    }

    /// <summary>Whether a head names a gate but not all of its units.</summary>
    public static bool LacksUnit(string head) => Bare().IsMatch(head);

    /// <summary>A second of reaction and a walk to the first gate.</summary>
    private static double Slowest(double metres) => 1 + metres / LowestSpeed;

    [GeneratedRegex(@"^t_?(?<d>\d+(\.\d+)?)_?(?<u>yd|m|ft)_(?<t>s|ms)$")]
    private static partial Regex Gate();

    [GeneratedRegex(@"^t_?\d+(\.\d+)?(_?[a-z]{1,4})?(_[a-z]{1,4})?$")]
    private static partial Regex Bare();
}
