using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Sprinting;

/// <summary>One run, the fit a report makes of it, and what must be said with its numbers.</summary>
public sealed record SprintReading
{
    private SprintReading()
    {
    }

    /// <summary>The run.</summary>
    public required SprintTrial Trial { get; init; }

    /// <summary>Scale, see <see cref="SprintSeries"/>.</summary>
    public required string Series { get; init; }

    /// <summary>The fit, by <see cref="SplitModelChoice"/>.</summary>
    public required SplitFit Fit { get; init; }

    /// <summary>What travels with every number from this fit; null when nothing.</summary>
    public string? Doubt { get; init; }

    /// <summary>Reads one run.</summary>
    /// <param name="trial">The run.</param>
    public static SprintReading Of(SprintTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        var choice = SplitModelChoice.For(trial.Start, trial.Splits.Count);
        var fit = SplitFitter.Fit(trial.Splits, choice.Model);
        var doubt = choice.Caveat;
        if (fit.State == SplitFitState.NoRunInSeen)
        {
            fit = SplitFitter.Fit(trial.Splits);
            doubt = "no unseen run-in was found, so the still-start model was fitted";
        }
        if (trial.Timing == TimingMethod.Hand) doubt = Join(doubt, "hand times: the spread between timers is not in the error");
        return new() { Trial = trial, Series = SprintSeries.Of(trial.Timing, trial.Start), Fit = fit, Doubt = doubt };
    }

    /// <summary>
    /// Reads the runs of a squad and shares the timing error between the fits of one series and one model (see <see cref="SplitErrorPool"/>).
    /// </summary>
    /// <param name="trials">Runs of one squad, timed by the same gates and staff.</param>
    /// <returns>One reading per run, in the order given.</returns>
    public static IReadOnlyList<SprintReading> OfSquad(IEnumerable<SprintTrial> trials)
    {
        ArgumentNullException.ThrowIfNull(trials);
        SprintReading[] readings = [.. trials.Select(Of)];
        var pools = SplitErrorPools.Of(readings);
        return [.. readings.Select(pools.Apply)];
    }

    internal static string? Join(string? one, string? other)
        => one is null ? other : other is null ? one : $"{one}; {other}";
}
