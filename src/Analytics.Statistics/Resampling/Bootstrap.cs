using Analytics.Statistics.Association;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Resampling;

/// <summary>The bootstrap: how a statistic scatters when the sample is drawn again from itself, with replacement [efrontibshirani1993].</summary>
/// <remarks>
/// Memory: 8 bytes a resample for the statistics, and no more that grows with their number; the resamples themselves are never kept. Reading an
/// interval takes a copy of the statistics from a shared pool for as long as it is read. Nothing is allocated per resample.
/// </remarks>
/// <example><code>Bootstrap.Mean(jumps).Interval();                                  // BCa, 95 %
/// Bootstrap.OfRows(x.Count, rows =&gt; Slope(rows), new() { Seed = 7 });   // any statistic of rows
/// Bootstrap.ByAthlete(names, rows =&gt; Slope(rows));                      // athletes drawn whole</code></example>
public static class Bootstrap
{
    /// <summary>The mean; no resample is written out.</summary>
    /// <param name="values">At least two finite values, independent of each other.</param>
    /// <param name="options">How much to resample; null for 10,000 on one thread.</param>
    public static BootstrapDistribution Mean(IReadOnlyList<double> values, BootstrapOptions? options = null)
    {
        Require.Sample(values, 2, nameof(values));
        var chosen = (options ?? new()).Checked();
        var (own, n, mean) = (values.ToArray(), values.Count, Moments.Mean(values));
        using var means = new MeanResamples(own, mean);
        var stream = new ResampleStream(chosen.Seed, n, n);
        return BootstrapDistribution.Of(mean, ResampleRun.Fill(chosen, () => (first, s) => means.Fill(stream, first, s)), chosen.Seed, n) with
        {
            What = "mean",
            // Leaving out one value moves the mean by its deviation over n − 1.
            LeaveOneOut = Array.ConvertAll(own, v => mean - (v - mean) / (n - 1)),
            Influence = Array.ConvertAll(own, v => v - mean),
        };
    }

    /// <summary>Pearson's correlation; pairs are drawn whole. The exact influence is zx zy − (r/2)(zx² + zy²), z with divisor n.</summary>
    /// <param name="x">At least three finite values, not all equal.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="options">How much to resample; null for 10,000 on one thread.</param>
    public static BootstrapDistribution Correlation(IReadOnlyList<double> x, IReadOnlyList<double> y, BootstrapOptions? options = null)
    {
        var statistic = new CorrelationOfRows(x, y);
        return OfRows(x.Count, statistic.Of, options) with { What = "correlation", Influence = statistic.Influence() };
    }

    /// <summary>Any statistic of a sample of numbers.</summary>
    /// <param name="values">At least two finite values.</param>
    /// <param name="statistic">The statistic.</param>
    /// <param name="options">How much to resample; null for 10,000 on one thread.</param>
    public static BootstrapDistribution OfValues(IReadOnlyList<double> values, SampleStatistic statistic, BootstrapOptions? options = null)
    {
        Require.Sample(values, 2, nameof(values));
        ArgumentNullException.ThrowIfNull(statistic);
        var chosen = (options ?? new()).Checked();
        var (own, n) = (values.ToArray(), values.Count);
        var stream = new ResampleStream(chosen.Seed, n, n);
        return BootstrapDistribution.Of(
            statistic([.. own]), ResampleRun.Fill(chosen, () => ResampleRun.OfValues(stream, own, statistic)), chosen.Seed, n) with
        {
            LeaveOneOut = [.. own.Select((_, i) => statistic([.. own[..i], .. own[(i + 1)..]]))],
        };
    }

    /// <summary>Any statistic of the rows of a table, each row drawn by itself.</summary>
    /// <param name="rows">Number of rows, at least 2.</param>
    /// <param name="statistic">The statistic of a set of row numbers.</param>
    /// <param name="options">How much to resample; null for 10,000 on one thread.</param>
    public static BootstrapDistribution OfRows(int rows, RowStatistic statistic, BootstrapOptions? options = null)
        => Grouped(RowGroups.Singles(Require.AtLeast(rows, 2, nameof(rows))), statistic, options, "rows");

    /// <summary>Any statistic of the rows of a table in which an athlete has several: athletes are drawn, each with all rows.</summary>
    /// <param name="athletes">Whose each row is; at least two athletes.</param>
    /// <param name="statistic">The statistic of a set of row numbers.</param>
    /// <param name="options">How much to resample; null for 10,000 on one thread.</param>
    public static BootstrapDistribution ByAthlete<T>(IReadOnlyList<T> athletes, RowStatistic statistic, BootstrapOptions? options = null)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(athletes);
        if (athletes.Distinct().Count() < 2)
            throw new ArgumentException($"The {athletes.Count} rows belong to {athletes.Distinct().Count()} athlete; drawing athletes needs at least 2.", nameof(athletes));
        return Grouped(RowGroups.By(athletes), statistic, options, "athletes");
    }

    /// <summary>A statistic of resamples drawn elsewhere, for example to repeat a published figure.</summary>
    /// <param name="rows">Number of rows of the data, at least 2.</param>
    /// <param name="statistic">The statistic of a set of row numbers.</param>
    /// <param name="resamples">Row numbers from 0 of each resample; at least two resamples.</param>
    public static BootstrapDistribution FromResamples(int rows, RowStatistic statistic, IReadOnlyList<int[]> resamples)
    {
        ArgumentNullException.ThrowIfNull(statistic);
        ArgumentNullException.ThrowIfNull(resamples);
        var groups = RowGroups.Singles(Require.AtLeast(rows, 2, nameof(rows)));
        Require.AtLeast(resamples.Count, 2, nameof(resamples));
        for (var b = 0; b < resamples.Count; b++)
        {
            if (resamples[b].Any(i => i < 0 || i >= rows))
                throw new ArgumentException($"Resample {b} names a row outside 0 to {rows - 1}; row numbers start at 0.", nameof(resamples));
        }

        return Finish(BootstrapDistribution.Of(statistic(groups.All()), [.. resamples.Select(r => statistic(r))], null, rows), groups, statistic);
    }

    private static BootstrapDistribution Grouped(RowGroups groups, RowStatistic statistic, BootstrapOptions? options, string units)
    {
        ArgumentNullException.ThrowIfNull(statistic);
        var chosen = (options ?? new()).Checked();
        var stream = new ResampleStream(chosen.Seed, groups.Units, groups.Units);
        var made = BootstrapDistribution.Of(
            statistic(groups.All()), ResampleRun.Fill(chosen, () => ResampleRun.OfRows(stream, groups, statistic)), chosen.Seed, groups.Units);
        return Finish(made, groups, statistic) with { UnitName = units };
    }

    private static BootstrapDistribution Finish(BootstrapDistribution made, RowGroups groups, RowStatistic statistic)
        => made with { LeaveOneOut = [.. Enumerable.Range(0, groups.Units).Select(u => statistic(groups.Without(u)))] };
}
