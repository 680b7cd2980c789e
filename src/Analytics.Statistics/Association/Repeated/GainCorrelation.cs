using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Association.Repeated;

/// <summary>
/// Did those who gained more than the squad in one measure gain more in another? Each athlete's gain is the slope of a straight line through all of his days,
/// the effects of the days taken off; the covariance that errors on one day have (a good day helps both tests) is read off what is left around the lines and
/// taken off too. A growth model of two measures by moments [fuller1987, maccallum1997].
/// </summary>
/// <remarks>One pair of gains an athlete: the interval is Fisher's scale, jackknife by athlete, Student's t with athletes − 1.</remarks>
public sealed record GainCorrelation : Result
{
    /// <summary>An athlete's gain is used when his first and last day lie at least this share of the span apart, in both measures (our choice, no source).</summary>
    public const double LeastSpan = 0.5;

    /// <summary>Fewest degrees of freedom around the lines for their covariance to be taken off (our choice, no source).</summary>
    public const double LeastFreedom = 8;

    internal GainCorrelation()
    {
    }

    /// <summary>Correlation of the gains with the covariance of errors taken off, still watered down by the size of the errors.</summary>
    public required double Value { get; init; }

    /// <summary>Jackknife standard error of <see cref="Value"/> on Fisher's scale; null when it does not exist.</summary>
    public required double? ErrorOfZ { get; init; }

    /// <summary>Correlation of the gains as they come out, shared errors and all.</summary>
    public required double Raw { get; init; }

    /// <summary>Correlation of the gains that errors alone would give; null when they cannot be told.</summary>
    public required double? FromErrors { get; init; }

    /// <summary>Correlation of the errors of the two measures on one day; null when it cannot be told.</summary>
    public required double? OfErrors { get; init; }

    /// <summary>Share of the variance of the gains in x that is true; below 0 by chance. Null when errors cannot be told.</summary>
    public required double? ReliabilityX { get; init; }

    /// <summary>The same of y.</summary>
    public required double? ReliabilityY { get; init; }

    /// <summary>p of an F test that all gains in x are truly alike; null when errors cannot be told.</summary>
    public required double? SpreadPX { get; init; }

    /// <summary>The same of y.</summary>
    public required double? SpreadPY { get; init; }

    /// <summary>The gains of each athlete used.</summary>
    public required IReadOnlyList<GainPair> Gains { get; init; }

    /// <summary>Athletes used.</summary>
    public int Athletes => Gains.Count;

    /// <summary>Athletes with a value of both who were not seen long enough in one of them.</summary>
    public required int TooShort { get; init; }

    /// <summary>Degrees of freedom behind the covariance of the errors.</summary>
    public required double ErrorFreedom { get; init; }

    /// <summary>Coverage of the intervals.</summary>
    public required double Level { get; init; }

    /// <summary>Whether gains truly differ between athletes in both measures (5 % each, our choice); otherwise there is nothing that could go together.</summary>
    public bool SpreadIsSeen => SpreadPX <= 0.05 && SpreadPY <= 0.05 && ReliabilityX > 0 && ReliabilityY > 0;

    /// <summary>Interval of <see cref="Value"/>; null when there is no error.</summary>
    public Interval? Interval => IntervalAt(Level);

    /// <summary>Two-sided p of no association.</summary>
    public double? P => AthleteBlocks.P(Value, ErrorOfZ, AthleteBlocks.Count(Athletes));

    /// <summary>
    /// Correlation of the true gains, <see cref="Value"/>/√(reliabilities) [spearman1904]; null when <see cref="SpreadIsSeen"/> is not. May lie beyond ±1 by
    /// chance; not clipped.
    /// </summary>
    public double? OfTrueGains => SpreadIsSeen ? Value / Dilution : null;

    /// <summary>Interval of <see cref="OfTrueGains"/>: that of <see cref="Value"/> over the same factor, ends beyond ±1 set there.</summary>
    public Interval? IntervalOfTrueGains => TrueIntervalAt(Level);

    /// <summary>Interval of <see cref="Value"/> at another level.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Interval? IntervalAt(double level) => AthleteBlocks.Around(Value, ErrorOfZ, AthleteBlocks.Count(Athletes), level);

    /// <summary>Interval of <see cref="OfTrueGains"/> at another level.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Interval? TrueIntervalAt(double level) => IntervalAt(level) is { } i && SpreadIsSeen
        ? new Interval(Math.Clamp(i.Low / Dilution, -1, 1), Math.Clamp(i.High / Dilution, -1, 1), level) : null;

    /// <summary>
    /// Athletes it takes to tell a true correlation of this size from none, with tests as good and days as many as here: by Fisher's scale. Null when the true
    /// spread is not seen.
    /// </summary>
    /// <param name="correlation">True correlation of the gains, above 0 and below 1.</param>
    /// <param name="power">Chance to find it, above 0 and below 1.</param>
    /// <param name="level">Coverage of the interval that is to exclude 0.</param>
    public int? AthletesNeeded(double correlation, double power = 0.9, double level = 0.95)
    {
        Require.Share(correlation, nameof(correlation));
        Require.Share(power, nameof(power));
        var reach = NormalLaw.TwoSided(level) + NormalLaw.Quantile(power);
        if (!SpreadIsSeen || reach <= 0) return null;
        var seen = Math.Atanh(Math.Min(0.999, correlation * Dilution));
        var needed = Math.Ceiling(3 + reach * reach / (seen * seen));
        return needed < int.MaxValue ? (int)needed : null;
    }

    /// <summary>From values by athlete and day; gaps allowed anywhere.</summary>
    /// <param name="athletes">Whose each row is.</param>
    /// <param name="times">When, in days from any start; equal numbers are one testing day.</param>
    /// <param name="x">Value of x on that day; null where there is none.</param>
    /// <param name="y">Value of y on that day; null where there is none.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    /// <param name="precisionX">Usual error variance of x over that of the row's value: below 1 for a value known less well; null when all are alike.</param>
    /// <param name="precisionY">The same of y.</param>
    /// <exception cref="ArgumentException">Fewer than 4 athletes with both gains.</exception>
    /// <exception cref="GainsAlikeException">The gains do not differ.</exception>
    public static GainCorrelation Of<T>(
        IReadOnlyList<T> athletes, IReadOnlyList<double> times, IReadOnlyList<double?> x, IReadOnlyList<double?> y, double level = 0.95,
        IReadOnlyList<double>? precisionX = null, IReadOnlyList<double>? precisionY = null)
        where T : notnull => GainRows.Read(athletes, times, x, y, precisionX, precisionY).Correlate(level);

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Gain with gain", "slopes of each athlete beyond the calendar, shared errors taken off; jackknife over athletes [fuller1987]",
    [
        new("correlation of gains", Value) { Interval = Interval },
        new("p", P),
        new("of true gains", OfTrueGains) { Interval = IntervalOfTrueGains },
        new("as it comes out", Raw),
        new("from errors alone", FromErrors),
    ])
    {
        Basis = FormattableString.Invariant($"{Athletes} athletes") + (TooShort > 0 ? FormattableString.Invariant($"; {TooShort} not seen long enough") : string.Empty),
        Remarks = ReliabilityX is null ? ["Too few days an athlete: errors on one day cannot be told from gains and are not taken off."]
            : SpreadIsSeen ? [] : ["True gains do not differ discernibly between athletes in one of the measures or both: there is nothing seen that could go together."],
    };

    private double Dilution => Math.Sqrt(ReliabilityX!.Value * ReliabilityY!.Value);
}
