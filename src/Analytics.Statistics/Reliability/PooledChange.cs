using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Reliability;

/// <summary>Change in the mean between two trials with the error pooled over all trials of the table.</summary>
/// <remarks>
/// From the additive model athlete + trial + error fitted to all values [hopkins2000]. Unlike <see cref="TrialPair"/> it judges the change by the error of all
/// trials, which has more degrees of freedom, and uses athletes who did only one of the two trials and another one. It takes the error as equal in all
/// trials; where the first trial is rougher than the rest, the pair by itself is right.
/// </remarks>
public sealed record PooledChange : Result
{
    private PooledChange(int first, int second) => (First, Second) = (first, second);

    /// <summary>Earlier trial, column from 0.</summary>
    public int First { get; }

    /// <summary>Later trial, column from 0.</summary>
    public int Second { get; }

    /// <summary>Change in the mean, later minus earlier, in the unit of the test, with Student's t interval.</summary>
    public required Estimate Change { get; init; }

    /// <summary>The error behind it, pooled over all trials.</summary>
    public required TypicalError Error { get; init; }

    /// <summary>Compares two trials.</summary>
    /// <param name="table">Athletes × trials, gaps allowed.</param>
    /// <param name="first">Earlier trial, column from 0.</param>
    /// <param name="second">Later trial, column from 0.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Too few repeats for an error, or no athletes link the two trials.</exception>
    public static PooledChange Of(TrialTable table, int first, int second, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(table);
        TrialPair.Column(first, table, nameof(first));
        TrialPair.Column(second, table, nameof(second));
        Require.Share(level, nameof(level));
        if (first == second) throw new ArgumentException($"first and second are both {first}; a change needs two different trials.", nameof(second));
        var error = TypicalErrors.FromTrials(table);
        var fit = AdditiveFit.Of(table);
        var variance = fit.VarianceOfDifference(first, second)
            ?? throw new ArgumentException($"No athletes link trial {first + 1} and trial {second + 1}, directly or by way of other trials; their change cannot be told from the difference of the athletes.", nameof(table));
        var change = fit.Effects[second] - fit.Effects[first];
        var own = error.Value * Math.Sqrt(variance);
        var reach = StudentLaw.TwoSided(level, error.DegreesOfFreedom) * own;
        return new(first, second)
        {
            Change = new(change, own, new(change - reach, change + reach, level), error.Athletes, "additive model, error pooled over all trials"),
            Error = error,
        };
    }

    /// <summary>Every pair of neighbours: trials 1–2, 2–3, …</summary>
    /// <param name="table">Athletes × trials, gaps allowed.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    public static IReadOnlyList<PooledChange> Neighbours(TrialTable table, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(table);
        return [.. Enumerable.Range(0, table.Trials - 1).Select(j => Of(table, j, j + 1, level))];
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        $"Trial {First + 1} to trial {Second + 1}, error of all trials", "additive model: athlete, trial, error [hopkins2000]",
        [
            new("change in the mean", Change.Value) { StandardError = Change.StandardError, Interval = Change.Interval, DegreesOfFreedom = Error.DegreesOfFreedom },
            new("typical error, all trials", Error.Value) { Interval = Error.Interval(Change.Interval!.Value.Level), DegreesOfFreedom = Error.DegreesOfFreedom },
        ])
    { Basis = Error.Sheet().Basis };
}
