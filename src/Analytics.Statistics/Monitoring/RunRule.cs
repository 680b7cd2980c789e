using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Monitoring;

/// <summary>
/// A rule that looks at the last few points together: at least <see cref="Needed"/> of the last <see cref="Window"/> beyond <see cref="Beyond"/> SD on one side
/// [nelson1984].
/// </summary>
/// <param name="Name">Name, in words a report can print.</param>
/// <param name="Needed">Points needed.</param>
/// <param name="Window">Points looked at.</param>
/// <param name="Beyond">Distance from the centre in standard deviations, 0 or more.</param>
public sealed record RunRule(string Name, int Needed, int Window, double Beyond)
{
    private const int LongestWindow = 20;

    /// <summary>Points needed, more than half of the window.</summary>
    public int Needed { get; } = 2 * Needed > Require.AtLeast(Window, 1, nameof(Window)) && Needed <= Window
        ? Needed
        : throw new ArgumentOutOfRangeException(nameof(Needed), Needed, $"{Needed} points of {Window} are needed; allowed: more than half of them and no more than all.");

    /// <summary>Points looked at, at most 20.</summary>
    public int Window { get; } = Window <= LongestWindow
        ? Window
        : throw new ArgumentOutOfRangeException(nameof(Window), Window, $"A window of {Window} points; allowed: 1 to {LongestWindow}.");

    /// <summary>Distance from the centre in standard deviations.</summary>
    public double Beyond { get; } = Require.NotNegative(Beyond, nameof(Beyond));

    /// <summary>One point beyond 3 SD.</summary>
    public static RunRule OneBeyondThree { get; } = new("one point beyond 3 SD", 1, 1, 3);

    /// <summary>Two of three points beyond 2 SD on one side.</summary>
    public static RunRule TwoOfThreeBeyondTwo { get; } = new("two of three points beyond 2 SD on one side", 2, 3, 2);

    /// <summary>Four of five points beyond 1 SD on one side.</summary>
    public static RunRule FourOfFiveBeyondOne { get; } = new("four of five points beyond 1 SD on one side", 4, 5, 1);

    /// <summary>Eight points in a row on one side of the centre.</summary>
    public static RunRule EightOnOneSide { get; } = new("eight points in a row on one side", 8, 8, 0);

    /// <summary>Nine points in a row on one side of the centre.</summary>
    public static RunRule NineOnOneSide { get; } = new("nine points in a row on one side", 9, 9, 0);

    /// <summary>The five rules.</summary>
    public static IReadOnlyList<RunRule> All { get; } = [OneBeyondThree, TwoOfThreeBeyondTwo, FourOfFiveBeyondOne, EightOnOneSide, NineOnOneSide];

    /// <summary>Chance that one full window signals when nothing has changed, centre and SD known: binomial tails of both sides.</summary>
    public double FalseAlarmRate
    {
        get
        {
            var p = NormalLaw.Cdf(-Beyond);
            var tail = 0.0;
            for (var j = Needed; j <= Window; j++) tail += MathNet.Numerics.SpecialFunctions.Binomial(Window, j) * Math.Pow(p, j) * Math.Pow(1 - p, Window - j);
            // The two sides exclude each other while more than half of a window is needed.
            return 2 * tail;
        }
    }

    /// <summary>Mean points to the first false alarm of this rule alone or, with others, of any of them; centre and SD known.</summary>
    /// <param name="rules">Rules used together; at least one.</param>
    public static FalseAlarms Together(IReadOnlyList<RunRule> rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (rules.Count == 0) throw new ArgumentException("No rules are given; name at least one.", nameof(rules));
        if (rules.Any(r => r is null)) throw new ArgumentException("One of the rules is null; leave it out.", nameof(rules));
        return new(null, RunRuleLength.Of(rules), $"{string.Join("; ", rules.Select(r => r.Name))}; centre and SD taken as known");
    }

    /// <summary>Positions (from 0) of the points at which the rule signals; before the window is full the points so far are looked at.</summary>
    /// <param name="values">Finite values in the order of time.</param>
    /// <param name="centre">Centre, finite.</param>
    /// <param name="standardDeviation">Standard deviation, above 0.</param>
    public IReadOnlyList<int> Signals(IReadOnlyList<double> values, double centre, double standardDeviation)
    {
        Require.Sample(values, 1, nameof(values));
        Require.Finite(centre, nameof(centre));
        Require.Positive(standardDeviation, nameof(standardDeviation));
        double[] z = [.. values.Select(v => (v - centre) / standardDeviation)];
        return [.. Enumerable.Range(0, z.Length).Where(end => SignalsAt(z.AsSpan(Math.Max(0, end - Window + 1)..(end + 1))))];
    }

    private bool SignalsAt(ReadOnlySpan<double> window)
    {
        int up = 0, down = 0;
        foreach (var v in window)
        {
            up += v > Beyond ? 1 : 0;
            down += v < -Beyond ? 1 : 0;
        }

        return up >= Needed || down >= Needed;
    }
}
