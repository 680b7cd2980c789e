using Analytics.Statistics.Results;

namespace Analytics.Statistics.Monitoring;

/// <summary>Limits of an EWMA chart.</summary>
public enum EwmaLimits
{
    /// <summary>Those it tends to, from the first point on. The default.</summary>
    Asymptotic,

    /// <summary>Narrower at the start, when few values are in the average: a change in the first weeks is seen sooner.</summary>
    TimeVarying,
}

/// <summary>
/// Exponentially weighted moving average: EWMAₜ = λ xₜ + (1 − λ) EWMAₜ₋₁ from the target, limits target ± L SD √(λ/(2 − λ)) [roberts1959;
/// lucassaccucci1990]. Sees small lasting changes sooner than single values do.
/// </summary>
public sealed record EwmaChart : Result
{
    private EwmaChart()
    {
    }

    /// <summary>Value the average starts from and is judged against.</summary>
    public required double Target { get; init; }

    /// <summary>Standard deviation of single values.</summary>
    public required double StandardDeviation { get; init; }

    /// <summary>Weight of the newest value, above 0, at most 1.</summary>
    public required double Lambda { get; init; }

    /// <summary>Width of the limits in standard deviations of the average.</summary>
    public required double Width { get; init; }

    /// <summary>Which limits.</summary>
    public required EwmaLimits Kind { get; init; }

    /// <summary>Mean points to the first false alarm for asymptotic limits with target and SD known; shorter for the others.</summary>
    public FalseAlarms FalseAlarms => new(null, EwmaRunLength.Of(Lambda, Width), Kind == EwmaLimits.Asymptotic
        ? "target and SD taken as known"
        : "target and SD taken as known, limits as if asymptotic from the start; the narrower first limits shorten it somewhat");

    /// <summary>A chart with known target and SD.</summary>
    /// <param name="target">Finite.</param>
    /// <param name="standardDeviation">Of single values, above 0.</param>
    /// <param name="lambda">Weight of the newest value, above 0, at most 1.</param>
    /// <param name="width">Width of the limits in standard deviations of the average, above 0.</param>
    /// <param name="kind">Which limits.</param>
    public static EwmaChart Known(double target, double standardDeviation, double lambda = 0.2, double width = 2.962, EwmaLimits kind = EwmaLimits.Asymptotic) => new()
    {
        Target = Require.Finite(target, nameof(target)),
        StandardDeviation = Require.Positive(standardDeviation, nameof(standardDeviation)),
        Lambda = EwmaRunLength.Weight(lambda),
        Width = EwmaRunLength.Width(width),
        Kind = kind,
    };

    /// <summary>The limits at a point, from 1.</summary>
    /// <param name="point">Number of values so far, at least 1.</param>
    public Interval LimitsAt(int point)
    {
        Require.AtLeast(point, 1, nameof(point));
        // 1 − (1 − λ)^2t without losing digits for a small λ.
        var share = Kind == EwmaLimits.Asymptotic || Lambda == 1 ? 1 : -Math.Exp(2 * point * double.LogP1(-Lambda)) + 1;
        var reach = Width * StandardDeviation * Math.Sqrt(Lambda / (2 - Lambda) * share);
        return new(Target - reach, Target + reach, 1 - FalseAlarms.KnownLimits(Width).PerPoint!.Value);
    }

    /// <summary>Places values on the chart.</summary>
    /// <param name="values">Finite values in the order of time.</param>
    public IReadOnlyList<ChartPoint> Points(IReadOnlyList<double> values)
    {
        Require.Sample(values, 1, nameof(values));
        var points = new ChartPoint[values.Count];
        var average = Target;
        for (var i = 0; i < points.Length; i++)
        {
            average = Lambda * values[i] + (1 - Lambda) * average;
            points[i] = new(i, values[i], average, LimitsAt(i + 1));
        }

        return points;
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("EWMA chart", FormattableString.Invariant($"EWMA, lambda {Lambda}, limits {Width} SD of the average, {(Kind == EwmaLimits.Asymptotic ? "asymptotic" : "time-varying")} [roberts1959; lucassaccucci1990]"),
    [
        new("target", Target) { Interval = LimitsAt(int.MaxValue / 2) },
        new("SD of single values", StandardDeviation),
        new("mean points to a false alarm", FalseAlarms.RunLength),
        new("mean points to see a lasting change of 1 SD", EwmaRunLength.Of(Lambda, Width, 1)),
    ])
    {
        Basis = "target and SD as given",
        Remarks = [FalseAlarms.InWords(), "A target or SD from few baseline points makes false alarms more frequent than this."],
    };
}
