using Analytics.Statistics.Results;

namespace Analytics.Statistics.Reliability;

/// <summary>Everything a retest says about a test, in one call: change in the mean, typical error in units and per cent, detectable change, correlation, and whether error grows with the score.</summary>
/// <remarks>Parts that the data cannot give are null and named in <see cref="Missing"/>; gaps in the table are allowed throughout.</remarks>
public sealed record RetestAnalysis : Result
{
    /// <summary>Typical error pooled over all trials.</summary>
    public required TypicalError Error { get; init; }

    /// <summary>The same in per cent; null when a value is not above 0.</summary>
    public required CoefficientOfVariation? Variation { get; init; }

    /// <summary>Neighbouring trials compared; a pair fewer than 2 athletes did is not here but in <see cref="Missing"/>.</summary>
    public required IReadOnlyList<TrialPair> Pairs { get; init; }

    /// <summary>The same neighbours by the error of all trials, athletes with gaps included; empty for two trials, where it says the same.</summary>
    public required IReadOnlyList<PooledChange> PooledChanges { get; init; }

    /// <summary>Consistency of single trials, ICC(3,1), from every athlete; null when it has no value.</summary>
    public required VarianceComponents? Components { get; init; }

    /// <summary>Whether logarithms are needed; null with fewer than 3 repeats.</summary>
    public required ErrorGrowth? Growth { get; init; }

    /// <summary>What could not be given, and why.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    /// <summary>Coverage of the intervals.</summary>
    public required double Level { get; init; }

    /// <summary>Analyses a table of trials.</summary>
    /// <param name="table">Athletes × trials, gaps allowed.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Fewer than 2 athletes have a repeat, so there is no error to state.</exception>
    public static RetestAnalysis Of(TrialTable table, double level = 0.95)
    {
        Require.Share(level, nameof(level));
        List<string> missing = [];
        var error = TypicalErrors.FromTrials(table);
        return new()
        {
            Error = error,
            Variation = Try("Error in per cent", () => CoefficientOfVariation.FromTrials(table)),
            Pairs = [.. Enumerable.Range(0, table.Trials - 1).Select(j => Try($"Trials {j + 1} and {j + 2}", () => TrialPair.Of(table, j, j + 1, level))).OfType<TrialPair>()],
            PooledChanges = table.Trials == 2 ? [] : [.. Enumerable.Range(0, table.Trials - 1).Select(j => Try($"Trials {j + 1} and {j + 2}, error of all trials", () => PooledChange.Of(table, j, j + 1, level))).OfType<PooledChange>()],
            Components = Try("Intraclass correlation", () => VarianceComponents.Of(table, IccForm.ConsistencySingle, level)),
            Growth = Try("Growth of error", () => ErrorGrowth.Of(table)),
            Missing = missing,
            Level = level,
        };

        T? Try<T>(string what, Func<T> make) where T : class
        {
            try
            {
                return make();
            }
            catch (ArgumentException reason)
            {
                missing.Add($"{what}: {Plain(reason)}");
                return null;
            }
        }
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet()
    {
        List<ResultLine> lines =
        [
            new("typical error", Error.Value) { Interval = Error.Interval(Level), DegreesOfFreedom = Error.DegreesOfFreedom },
            new("minimal detectable change", Error.DetectableChange()) { Note = "95 %" },
        ];
        if (Variation is { } cv) lines.Add(new("coefficient of variation", cv.Percent, "%") { Interval = cv.Interval(Level), DegreesOfFreedom = cv.LogError.DegreesOfFreedom });
        if (Components is { } parts)
        {
            lines.Add(new("ICC(3,1), also ICC(C,1)", parts.Icc) { Interval = parts.Interval });
            lines.Add(new("SD between athletes", parts.BetweenStandardDeviation) { Note = parts.BetweenStandardDeviation is null ? "no between-athlete variance was found" : string.Empty });
        }

        lines.AddRange(Pairs.Select(p => new ResultLine($"change, trial {p.First + 1} to {p.Second + 1}", p.Change.Value)
        {
            Interval = p.Change.Interval,
            StandardError = p.Change.StandardError,
            DegreesOfFreedom = p.Error.DegreesOfFreedom,
        }));
        lines.AddRange(PooledChanges.Select(p => new ResultLine($"change, trial {p.First + 1} to {p.Second + 1}, error of all trials", p.Change.Value)
        {
            Interval = p.Change.Interval,
            StandardError = p.Change.StandardError,
            DegreesOfFreedom = p.Error.DegreesOfFreedom,
        }));
        return new("Retest", "additive model: athlete, trial, error [hopkins2000]", lines)
        {
            Basis = Error.Sheet().Basis,
            Remarks = [.. Growth is { } g ? [g.Words] : Array.Empty<string>(), .. Missing],
        };
    }

    // The runtime appends the parameter name to the message of an ArgumentException.
    private static string Plain(ArgumentException reason)
        => reason.ParamName is { } name ? reason.Message.Replace($" (Parameter '{name}')", string.Empty, StringComparison.Ordinal) : reason.Message;
}
