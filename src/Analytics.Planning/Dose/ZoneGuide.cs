using System.Globalization;

namespace Analytics.Planning.Dose;

/// <summary>
/// Repetitions of one weightlifting movement in one session by intensity, after the logs of Soviet weightlifters [hristov2005]. Copies differ at the edges: here a
/// zone begins at its lower figure and ends where the next begins, and 7 is taken as the usual total at 90 % and more (some copies print 4).
/// </summary>
/// <param name="FromPercent">Lower edge, % of 1RM, in the zone.</param>
/// <param name="ToPercent">Upper edge, not in the zone.</param>
/// <param name="LeastPerSet">Fewest repetitions of a set.</param>
/// <param name="MostPerSet">Most repetitions of a set.</param>
/// <param name="Usual">Usual total.</param>
/// <param name="Least">Least total.</param>
/// <param name="Most">Most total.</param>
public sealed record ZoneGuide(double FromPercent, double ToPercent, int LeastPerSet, int MostPerSet, int Usual, int Least, int Most)
{
    /// <summary>The zones, lightest first.</summary>
    public static IReadOnlyList<ZoneGuide> All { get; } =
    [
        new(0, 70, 3, 6, 24, 18, 30),
        new(70, 80, 3, 6, 18, 12, 24),
        new(80, 90, 2, 4, 15, 10, 20),
        new(90, double.PositiveInfinity, 1, 2, 7, 4, 10),
    ];

    /// <summary>Parts that make a whole guide: every zone's most divides it, so that repetitions of several zones add up without rounding.</summary>
    public const int Whole = 120;

    /// <summary>Parts of the guide one repetition takes.</summary>
    public int PartsPerRepetition => Whole / Most;

    /// <summary>The zone in words.</summary>
    public string Words => FromPercent <= 0 ? string.Create(CultureInfo.InvariantCulture, $"below {ToPercent:0} %")
        : double.IsPositiveInfinity(ToPercent) ? string.Create(CultureInfo.InvariantCulture, $"at {FromPercent:0} % and more")
        : string.Create(CultureInfo.InvariantCulture, $"at {FromPercent:0} % to below {ToPercent:0} %");

    /// <summary>The zone of an intensity; an edge belongs to the upper zone.</summary>
    /// <param name="percent">% of 1RM, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public static ZoneGuide At(double percent) => percent > 0 ? All.First(z => percent < z.ToPercent)
        : throw new ArgumentOutOfRangeException(nameof(percent), percent, "An intensity must be above 0 %.");
}
