using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;
using Analytics.Simulation.Demo;

namespace Analytics.Simulation.ErrorRates;

/// <summary>Intervals of the fitted curve against the true curve of the very same run.</summary>
/// <param name="model">Start model to fit; null for the one the library chooses.</param>
public sealed class SprintFitRates(StartModel? model)
{
    private double _speedMiss, _constantMiss;

    public Tally Speed { get; } = new();

    public Tally TimeConstant { get; } = new();

    /// <summary>Fitted less true top speed, mean over runs, m/s.</summary>
    public double SpeedBias => _speedMiss / Speed.Asked;

    /// <summary>Fitted less true time constant, mean over runs, s.</summary>
    public double TimeConstantBias => _constantMiss / TimeConstant.Asked;

    public void Add(SeasonChain chain)
    {
        var trials = chain.Days.SelectMany(d => d).SelectMany(a => a.Of<SprintTrial>()).Where(t => t.Timing == TimingMethod.Electronic).ToList();
        var runs = chain.Truth.Runs.ToDictionary(r => (SeasonCalendar.TestingDays[r.Day], chain.Truth.Players[r.Player].Id, r.Attempt));
        foreach (var (trial, fit) in Fits(trials))
        {
            if (fit.Curve is not { } curve) continue;
            var run = runs[(trial.Date, trial.AthleteId, trial.Attempt)];
            Speed.Add(chain.Number, curve.TopSpeed.Interval!.Value.Contains(run.SpeedMetresPerSecond));
            TimeConstant.Add(chain.Number, curve.TimeConstant.Interval!.Value.Contains(run.TimeConstantSeconds));
            _speedMiss += curve.TopSpeed.Value - run.SpeedMetresPerSecond;
            _constantMiss += curve.TimeConstant.Value - run.TimeConstantSeconds;
        }
    }

    private List<(SprintTrial Trial, SplitFit Fit)> Fits(IReadOnlyList<SprintTrial> trials)
    {
        if (model is not { } start) return [.. SprintReading.OfSquad(trials).Select(r => (r.Trial, r.Fit))];
        var fits = trials.Select(t => (Trial: t, Fit: SplitFitter.Fit(t.Splits, start))).ToList();
        var pool = SplitErrorPool.Of(fits.Select(f => f.Fit));
        return pool is null ? fits : [.. fits.Select(f => (f.Trial, f.Fit.Curve is null ? f.Fit : f.Fit.With(pool)))];
    }
}
