using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Monitoring;

/// <summary>
/// Limits for one athlete from his own few tests that keep their rate however few they are: mean ± t(m − 1) s √(1 + 1/m), the interval that holds
/// one new value.
/// </summary>
public sealed record OwnBaseline : Result
{
    private OwnBaseline()
    {
    }

    /// <summary>Mean of the baseline.</summary>
    public required double Mean { get; init; }

    /// <summary>Standard deviation of the baseline.</summary>
    public required double StandardDeviation { get; init; }

    /// <summary>The limits; their level is the share of unchanged new values inside.</summary>
    public required Interval Limits { get; init; }

    /// <summary>Baseline points m.</summary>
    public required int Points { get; init; }

    /// <summary>1 − level exactly, for normal values, on average over baselines.</summary>
    public FalseAlarms FalseAlarms => new(1 - Limits.Level, null, FormattableString.Invariant($"Student's t with {Points - 1} degrees of freedom; average over baselines"));

    /// <summary>Limits from a baseline in which nothing has changed.</summary>
    /// <param name="baseline">At least two finite values, not all equal.</param>
    /// <param name="level">Share of unchanged new values inside, above 0 and below 1.</param>
    public static OwnBaseline Of(IReadOnlyList<double> baseline, double level = 0.95)
    {
        Require.Sample(baseline, 2, nameof(baseline));
        var (m, mean, sd) = (baseline.Count, Moments.Mean(baseline), Moments.StandardDeviation(baseline));
        if (!(sd > 0))
            throw new ArgumentException(FormattableString.Invariant($"All {m} baseline values are {baseline[0]}; limits need values that differ. Record with more digits, or use a typical error of the squad."), nameof(baseline));
        var reach = StudentLaw.TwoSided(level, m - 1) * sd * Math.Sqrt(1 + 1.0 / m);
        return new() { Mean = mean, StandardDeviation = sd, Limits = new Interval(mean - reach, mean + reach, level), Points = m };
    }

    /// <summary>Two-sided p of a new value against the baseline.</summary>
    /// <param name="value">A finite value.</param>
    public double P(double value)
        => 2 * StudentLaw.Cdf(-Math.Abs(Require.Finite(value, nameof(value)) - Mean) / (StandardDeviation * Math.Sqrt(1 + 1.0 / Points)), Points - 1);

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Limits of one athlete's own baseline", "mean ± t SD √(1 + 1/m), prediction interval of one new value",
        [new("mean", Mean) { Interval = Limits, DegreesOfFreedom = Points - 1 }, new("SD", StandardDeviation)])
    {
        Basis = FormattableString.Invariant($"{Points} baseline points"),
        Remarks = [FalseAlarms.InWords()],
    };
}
