using System.Globalization;
using Analytics.Metrics.Sprinting.Curve;
using Analytics.Quantities;
using Analytics.Statistics;
using Analytics.Statistics.Fitting;

namespace Analytics.Metrics.Sprinting.Fits;

/// <summary>
/// A fitted run with its errors and what it predicts. Standard errors are s²·(J'J)⁻¹ carried on by derivatives (delta method);
/// intervals use Student's t with the degrees of freedom of s. Distances count from the start line, times on the clock that was fitted.
/// </summary>
public sealed class SprintCurve
{
    private readonly double[] parameters;
    private readonly SymmetricMatrix unscaled;
    private readonly SplitTimeModel model;

    internal SprintCurve(
        StartModel start, SplitResponse response, IReadOnlyList<double> parameters, SymmetricMatrix unscaled, int gates,
        double? residualSd, int degreesOfFreedom, SplitErrorPool? pool)
    {
        (Start, Response, Gates, ResidualSd, DegreesOfFreedom, Pool) = (start, response, gates, residualSd, degreesOfFreedom, pool);
        (this.parameters, this.unscaled, model) = ([.. parameters], unscaled, new(start));
    }

    /// <summary>What was assumed about the start.</summary>
    public StartModel Start { get; }

    /// <summary>Which number carries the error.</summary>
    public SplitResponse Response { get; }

    /// <summary>Gates behind the curve.</summary>
    public int Gates { get; }

    /// <summary>s, in s (time response) or m (distance response): the run's own, or the pool's.</summary>
    public double? ResidualSd { get; }

    /// <summary>Degrees of freedom of <see cref="ResidualSd"/>.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>The pool the errors come from; null when they are the run's own.</summary>
    public SplitErrorPool? Pool { get; }

    /// <summary>V and T as a curve from rest.</summary>
    public MonoExponential FromRest => new(Speed.FromMetresPerSecond(parameters[0]), Duration.FromSeconds(parameters[1]));

    /// <summary>V, in m/s.</summary>
    public Estimate TopSpeed => Parameter(0, "top speed");

    /// <summary>T, in s. Never compare it across start types.</summary>
    public Estimate TimeConstant => Parameter(1, "time constant");

    /// <summary>V/T, in m/s².</summary>
    public Estimate InitialAcceleration
    {
        get
        {
            var (v, tau) = (parameters[0], parameters[1]);
            var gradient = new double[parameters.Length];
            (gradient[0], gradient[1]) = (1 / tau, -v / (tau * tau));
            return Propagate(v / tau, gradient, "initial acceleration");
        }
    }

    /// <summary>t0, in s: a nuisance term that soaks up start and model error; it is not a reaction time. Null unless fitted.</summary>
    public Estimate? Offset => Start.HasOffset() ? Parameter(2, "clock offset, not a reaction time") : null;

    /// <summary>D, in m, covered before the clock started. Null unless fitted.</summary>
    public Estimate? RunIn
    {
        get
        {
            if (!Start.HasRunIn()) return null;
            var gradient = new double[parameters.Length];
            return Propagate(model.RunIn(parameters, gradient), gradient, "unseen run-in");
        }
    }

    /// <summary>Covariance of the fitted parameters V, T, then t0 (s), then the unseen time h (s) of the run-in; null when no error is known.</summary>
    public SymmetricMatrix? Covariance => ResidualSd is { } s ? unscaled.Times(s * s) : null;

    /// <summary>Expected time on the clock at a distance, in s.</summary>
    /// <param name="distance">From the start line, above 0.</param>
    public Estimate TimeAt(Length distance)
    {
        var gradient = new double[parameters.Length];
        return Propagate(Time(distance, gradient), gradient, "time at " + distance);
    }

    /// <summary>
    /// Time that a new gate, or a new run of the same ability, would read, in s: the interval holds one reading, not the expectation.
    /// The residual error of a fit holds timing and misfit within a run, not the change from run to run.
    /// </summary>
    /// <param name="distance">From the start line, above 0.</param>
    public Estimate NewTimeAt(Length distance)
    {
        var gradient = new double[parameters.Length];
        var time = Time(distance, gradient);
        // With distance response the scatter is in metres; the runner covers them at the speed there.
        var scatter = Response == SplitResponse.Time ? 1 : 1 / SpeedAt(distance).Value;
        return Make(time, unscaled.QuadraticForm(gradient) + (scatter * scatter), "new reading at " + distance);
    }

    /// <summary>Speed at a distance, in m/s.</summary>
    /// <param name="distance">From the start line, 0 or more.</param>
    public Estimate SpeedAt(Length distance)
    {
        var gradient = new double[parameters.Length];
        var speed = model.Speed(Require.NotNegative(distance, "distance").Metres, parameters, gradient);
        return Propagate(speed, gradient, "speed at " + distance);
    }

    /// <summary>Body mass times speed at a distance, in kg·m/s. The error of the scales is not in it.</summary>
    /// <param name="distance">From the start line, 0 or more.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    public Estimate MomentumAt(Length distance, Mass bodyMass)
        => SpeedAt(distance).Times(Require.Positive(bodyMass, "body mass").Kilograms) with { Method = Words("momentum at " + distance) };

    /// <summary>Carries the fit's error on to any quantity made from V and T.</summary>
    /// <param name="value">The quantity.</param>
    /// <param name="byTopSpeed">Its derivative by V.</param>
    /// <param name="byTimeConstant">Its derivative by T.</param>
    /// <param name="name">What it is, for the method words.</param>
    public Estimate Carry(double value, double byTopSpeed, double byTimeConstant, string name)
    {
        var gradient = new double[parameters.Length];
        (gradient[0], gradient[1]) = (byTopSpeed, byTimeConstant);
        return Propagate(value, gradient, name);
    }

    internal SprintCurve With(SplitErrorPool pool)
        => new(Start, Response, parameters, unscaled, Gates, pool.ResidualSd, pool.DegreesOfFreedom, pool);

    private double Time(Length distance, Span<double> gradient)
        => model.Evaluate(Require.Positive(distance, "distance").Metres, parameters, gradient);

    private Estimate Parameter(int index, string name) => Make(parameters[index], unscaled[index, index], name);

    private Estimate Propagate(double value, ReadOnlySpan<double> gradient, string name) => Make(value, unscaled.QuadraticForm(gradient), name);

    private Estimate Make(double value, double unscaledVariance, string name)
    {
        if (ResidualSd is not { } s) return new(value, null, null, Gates, Words(name));
        var error = s * Math.Sqrt(unscaledVariance);
        var reach = StudentMultiplier.Of(DegreesOfFreedom) * error;
        return new(value, error, new(value - reach, value + reach), Gates, Words(name));
    }

    private string Words(string name)
    {
        var scale = Pool is { } pool
            ? string.Create(CultureInfo.InvariantCulture, $"error pooled over {pool.Fits} runs, {DegreesOfFreedom} df")
            : string.Create(CultureInfo.InvariantCulture, $"error of this run alone, {DegreesOfFreedom} df");
        return string.Create(CultureInfo.InvariantCulture,
            $"{name}; mono-exponential fit of {(Response == SplitResponse.Time ? "times" : "distances")}, {Start.InWords()}, {Gates} gates; {scale}");
    }
}
