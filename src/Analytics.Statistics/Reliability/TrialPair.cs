using Analytics.Statistics.Fitting;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Reliability;

/// <summary>Two trials compared: what changed on average, and how far each athlete's change strays from that [hopkins2000].</summary>
public sealed record TrialPair : Result
{
    private TrialPair(int first, int second) => (First, Second) = (first, second);

    /// <summary>Earlier trial, column from 0.</summary>
    public int First { get; }

    /// <summary>Later trial, column from 0.</summary>
    public int Second { get; }

    /// <summary>Change in the mean, later minus earlier, with Student's t interval.</summary>
    public required Estimate Change { get; init; }

    /// <summary>SD of the differences.</summary>
    public required double DifferenceSpread { get; init; }

    /// <summary>Typical error from this pair: SD of the differences/√2.</summary>
    public required TypicalError Error { get; init; }

    /// <summary>Pearson's correlation of the two trials; null for 2 athletes or when one trial does not vary. It hides a change in the mean.</summary>
    public required double? Correlation { get; init; }

    /// <summary>Compares two trials on the athletes who did both.</summary>
    /// <param name="table">Athletes × trials.</param>
    /// <param name="first">Earlier trial, column from 0.</param>
    /// <param name="second">Later trial, column from 0.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Fewer than 2 athletes did both.</exception>
    public static TrialPair Of(TrialTable table, int first, int second, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(table);
        Column(first, table, nameof(first));
        Column(second, table, nameof(second));
        var both = Enumerable.Range(0, table.Athletes).Where(i => table[i, first].HasValue && table[i, second].HasValue).ToArray();
        if (both.Length < 2)
            throw new ArgumentException($"{both.Length} of {table.Athletes} athletes did both trial {first + 1} and trial {second + 1}; at least 2 are needed.", nameof(table));
        double[] x = [.. both.Select(i => table[i, first]!.Value)], y = [.. both.Select(i => table[i, second]!.Value)];
        var differences = table.Differences(first, second);
        var spread = Moments.StandardDeviation(differences);
        return new(first, second)
        {
            Change = MeanEstimate.Of(differences, level),
            DifferenceSpread = spread,
            Error = new()
            {
                Value = spread / Math.Sqrt(2),
                DegreesOfFreedom = both.Length - 1,
                Athletes = both.Length,
                WithoutRepeat = table.Athletes - both.Length,
                Method = $"SD of the differences of trials {first + 1} and {second + 1} over √2",
            },
            Correlation = both.Length > 2 && x.Any(v => v != x[0]) ? StraightLine.Of(x, y).Correlation : null,
        };
    }

    /// <summary>Every pair of neighbours: trials 1–2, 2–3, … A change that keeps shrinking is learning that has not ended yet.</summary>
    /// <param name="table">Athletes × trials.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    public static IReadOnlyList<TrialPair> Neighbours(TrialTable table, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(table);
        return [.. Enumerable.Range(0, table.Trials - 1).Select(j => Of(table, j, j + 1, level))];
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        $"Trial {First + 1} to trial {Second + 1}", "paired differences [hopkins2000]",
        [
            new("change in the mean", Change.Value) { StandardError = Change.StandardError, Interval = Change.Interval, DegreesOfFreedom = Error.DegreesOfFreedom },
            new("SD of differences", DifferenceSpread) { DegreesOfFreedom = Error.DegreesOfFreedom },
            new("typical error", Error.Value) { Interval = Error.Interval(Change.Interval!.Value.Level), DegreesOfFreedom = Error.DegreesOfFreedom },
            new("correlation", Correlation),
        ])
    { Basis = $"{Change.N} athletes with both trials" + (Error.WithoutRepeat > 0 ? $"; {Error.WithoutRepeat} without one of them" : string.Empty) };

    internal static void Column(int trial, TrialTable table, string name)
    {
        if (trial < 0 || trial >= table.Trials)
            throw new ArgumentOutOfRangeException(name, trial, $"{name} is {trial}; allowed: 0 to {table.Trials - 1} (columns from 0).");
    }
}
