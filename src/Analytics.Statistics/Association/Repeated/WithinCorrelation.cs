using Analytics.Statistics.Results;

namespace Analytics.Statistics.Association.Repeated;

/// <summary>
/// Correlation within athletes whose interval takes the athlete as the unit. Without the days it is the repeated-measures correlation [bakdash2017] with
/// another interval; with the days taken off, what a day did to everybody (training of the whole squad, the weather) is no longer in it.
/// </summary>
/// <remarks>
/// Rests of one athlete depend on each other, since a gain once made stays; the degrees of freedom of the classic interval are too many for them.
/// Here: Fisher's scale, jackknife by athlete, Student's t with athletes − 1.
/// </remarks>
public sealed record WithinCorrelation : Result
{
    private WithinCorrelation()
    {
    }

    /// <summary>The correlation, −1 to 1.</summary>
    public required double Value { get; init; }

    /// <summary>Jackknife standard error on Fisher's scale; null when it does not exist.</summary>
    public required double? ErrorOfZ { get; init; }

    /// <summary>Whether the effects of the days are taken off.</summary>
    public required bool BeyondDays { get; init; }

    /// <summary>Pairs used, of athletes with two or more.</summary>
    public required int Pairs { get; init; }

    /// <summary>Athletes used.</summary>
    public required int Athletes { get; init; }

    /// <summary>Athletes with one pair only, who say nothing about change.</summary>
    public required int WithoutRepeat { get; init; }

    /// <summary>Coverage of <see cref="Interval"/>.</summary>
    public required double Level { get; init; }

    /// <summary>Interval; null with fewer than 3 athletes or at exactly ±1.</summary>
    public Interval? Interval => IntervalAt(Level);

    /// <summary>Two-sided p; null without an interval.</summary>
    public double? P => AthleteBlocks.P(Value, ErrorOfZ, AthleteBlocks.Count(Athletes));

    /// <summary>The interval at another level.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Interval? IntervalAt(double level) => AthleteBlocks.Around(Value, ErrorOfZ, AthleteBlocks.Count(Athletes), level);

    /// <summary>Each athlete's own mean taken off.</summary>
    /// <param name="athletes">Whose each pair is; at least three athletes with two pairs or more.</param>
    /// <param name="x">Finite values that vary within athletes.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static WithinCorrelation OfAthletes<T>(IReadOnlyList<T> athletes, IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95)
        where T : notnull => Of(athletes, null, x, y, level);

    /// <summary>Each athlete's mean and each day's effect taken off by least squares, whoever is missing on which day.</summary>
    /// <param name="athletes">Whose each pair is; at least three athletes with two pairs or more.</param>
    /// <param name="days">The day of each pair as a number, for example days since the first; equal numbers are one day.</param>
    /// <param name="x">Finite values that vary beyond athletes and days.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static WithinCorrelation BeyondCalendar<T>(
        IReadOnlyList<T> athletes, IReadOnlyList<double> days, IReadOnlyList<double> x, IReadOnlyList<double> y, double level = 0.95)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(days);
        return Of(athletes, days, x, y, level);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        BeyondDays ? "Correlation within athletes, beyond the calendar" : "Correlation within athletes",
        (BeyondDays ? "rests after athlete and day" : "repeated-measures correlation [bakdash2017]") + ", interval on Fisher's scale by jackknife over athletes",
        [new("correlation", Value) { Interval = Interval, DegreesOfFreedom = Interval is null ? null : AthleteBlocks.Count(Athletes) - 1 }, new("p", P)])
    {
        Basis = FormattableString.Invariant($"{Pairs} pairs of {Athletes} athletes") + (WithoutRepeat > 0 ? FormattableString.Invariant($"; {WithoutRepeat} with one pair left out") : string.Empty),
        Remarks = Interval is null ? ["No interval: too few athletes, or the pairs lie exactly on lines."] : [],
    };

    private static WithinCorrelation Of<T>(IReadOnlyList<T> athletes, IReadOnlyList<double>? days, IReadOnlyList<double> x, IReadOnlyList<double> y, double level)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(athletes);
        Paired.Require(x, y, 2);
        Paired.SameLength(x, athletes, nameof(athletes));
        Require.Share(level, nameof(level));
        if (days is not null)
        {
            Require.Sample(days, 2, nameof(days));
            Paired.SameLength(x, days, nameof(days));
        }

        var order = days?.Distinct().Order().ToList() ?? [];
        var place = order.Select((d, i) => (d, i)).ToDictionary(p => p.d, p => p.i);
        var groups = Enumerable.Range(0, x.Count).GroupBy(i => athletes[i])
            .Select(g => g.Select(i => (Day: days is null ? 0 : place[days[i]], X: x[i], Y: y[i])).ToList()).ToList();
        var used = groups.Where(g => g.Count > 1).ToList();
        if (used.Count < 3)
            throw new ArgumentException($"{used.Count} of {groups.Count} athletes have two pairs or more; at least 3 are needed for an interval with the athlete as the unit.", nameof(athletes));
        if (days is not null && used.Any(g => g.Select(p => p.Day).Distinct().Count() < g.Count))
            throw new ArgumentException("An athlete has two pairs on one day; give one pair for each athlete and day, the best or the mean.", nameof(days));

        var all = new WithinSums(Math.Max(1, order.Count));
        foreach (var own in used) all.Add(own);
        var r = Correlate(all.Left(days is not null), x, y);
        if (double.IsNaN(r))
            throw new ArgumentException($"x or y does not vary within athletes{(days is null ? string.Empty : " beyond what the days explain")}; a correlation needs values that change.", nameof(x));
        return new()
        {
            Value = r,
            ErrorOfZ = Math.Abs(r) < 1 ? Jackknife(all, used, days is not null, x, y) : null,
            BeyondDays = days is not null,
            Pairs = used.Sum(g => g.Count),
            Athletes = used.Count,
            WithoutRepeat = groups.Count - used.Count,
            Level = level,
        };
    }

    private static double? Jackknife(WithinSums all, List<List<(int Day, double X, double Y)>> used, bool daysToo, IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        var without = new List<double>();
        foreach (var block in used.Select((own, i) => (own, i)).GroupBy(p => AthleteBlocks.Of(p.i, used.Count)))
        {
            foreach (var (own, _) in block) all.Add(own, -1);
            without.Add(Math.Atanh(Correlate(all.Left(daysToo), x, y)));
            foreach (var (own, _) in block) all.Add(own);
        }

        return AthleteBlocks.Error(without);
    }

    // Not a number when what is left of x or y is rounding only.
    private static double Correlate((double XX, double YY, double XY) s, IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        if (!Varies(s.XX, x) || !Varies(s.YY, y)) return double.NaN;
        var r = s.XY / Math.Sqrt(s.XX) / Math.Sqrt(s.YY);
        // What rounding leaves beside 1 would else be an infinite Fisher's z in one jackknife look and a large one in the next.
        return 1 - Math.Abs(r) < 1e-12 ? Math.Sign(r) : r;
    }

    // An SD under 1e-12 of the values is what rounding leaves of none.
    private static bool Varies(double squares, IReadOnlyList<double> values)
    {
        var size = values.Max(Math.Abs);
        return squares > 1e-24 * size * size * values.Count;
    }
}
