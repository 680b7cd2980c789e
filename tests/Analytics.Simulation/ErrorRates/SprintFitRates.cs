using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;
using Analytics.Simulation.Demo;

namespace Analytics.Simulation.ErrorRates;

/// <summary>Intervals of the fitted curve against the true curve of the very same run.</summary>
/// <param name="model">Start model to fit; null for the one the library chooses.</param>
public sealed class SprintFitRates(StartModel? model)
{
    private double _speedMiss, _constantMiss, _speedSquares, _constantSquares;

    public Tally Speed { get; } = new();

    public Tally TimeConstant { get; } = new();

    /// <summary>Fitted less true top speed, mean over runs, m/s.</summary>
    public double SpeedBias => _speedMiss / Speed.Asked;

    /// <summary>Fitted less true time constant, mean over runs, s.</summary>
    public double TimeConstantBias => _constantMiss / TimeConstant.Asked;

    /// <summary>SD over runs of fitted less true top speed, m/s.</summary>
    public double SpeedSpread => Math.Sqrt(_speedSquares / Speed.Asked - SpeedBias * SpeedBias);

    /// <summary>SD over runs of fitted less true time constant, s.</summary>
    public double TimeConstantSpread => Math.Sqrt(_constantSquares / TimeConstant.Asked - TimeConstantBias * TimeConstantBias);

    public void Add(SeasonChain chain)
    {
        var trials = chain.Days.SelectMany(d => d).SelectMany(a => a.Of<SprintTrial>()).Where(t => t.Timing == TimingMethod.Electronic).ToList();
        var runs = chain.Truth.Runs.ToDictionary(r => (SeasonCalendar.DateOf(r.Day), chain.Truth.Players[r.Player].Id, r.Attempt));
        foreach (var (trial, fit) in Fits(trials))
        {
            if (fit.Curve is not { } curve) continue;
            var run = runs[(trial.Date, trial.AthleteId, trial.Attempt)];
            Speed.Add(chain.Number, curve.TopSpeed.Interval!.Value.Contains(run.SpeedMetresPerSecond));
            TimeConstant.Add(chain.Number, curve.TimeConstant.Interval!.Value.Contains(run.TimeConstantSeconds));
            double speed = curve.TopSpeed.Value - run.SpeedMetresPerSecond, constant = curve.TimeConstant.Value - run.TimeConstantSeconds;
            (_speedMiss, _speedSquares) = (_speedMiss + speed, _speedSquares + speed * speed);
            (_constantMiss, _constantSquares) = (_constantMiss + constant, _constantSquares + constant * constant);
        }
    }

    private List<(SprintTrial Trial, SplitFit Fit)> Fits(IReadOnlyList<SprintTrial> trials)
    {
        if (model is not { } start) return [.. SprintReading.OfSquad(trials).Select(r => (r.Trial, r.Fit))];
        var fits = trials.Select(t => (Trial: t, Fit: RunFits.Of(t, start))).ToList();
        var pools = fits.GroupBy(f => f.Fit.Start).ToDictionary(g => g.Key, g => SplitErrorPool.Of(g.Select(f => f.Fit)));
        return [.. fits.Select(f => (f.Trial, pools[f.Fit.Start] is { } pool ? f.Fit.With(pool) : f.Fit))];
    }
}
