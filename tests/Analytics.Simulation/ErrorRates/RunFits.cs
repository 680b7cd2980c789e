using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;
using Analytics.Statistics;

namespace Analytics.Simulation.ErrorRates;

/// <summary>Runs fitted with a start model of our choice, where the library would choose another.</summary>
public static class RunFits
{
    /// <summary>The fit of a run; with no unseen run-in to be found the still start, as the library does it.</summary>
    public static SplitFit Of(SprintTrial trial, StartModel model)
    {
        var fit = SplitFitter.Fit(trial.Splits, model);
        return fit.State == SplitFitState.NoRunInSeen ? SplitFitter.Fit(trial.Splits) : fit;
    }

    /// <summary>A fitted metric from fits with the unseen run-in.</summary>
    public static Func<Metric, Metric> WithRunIn(Func<SprintCurve, Estimate> quantity) => metric => metric with
    {
        FromTrials = day =>
            from trial in day.Of<SprintTrial>()
            let curve = Of(trial, StartModel.RunIn).Curve
            where curve is not null
            select new TrialValue(quantity(curve).Value, Series: SprintSeries.Of(trial.Timing, trial.Start)),
    };
}
