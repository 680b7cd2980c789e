using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Agreement;

/// <summary>Limits between which the difference of two methods, or of two tests, should lie for a new athlete [blandaltman1986].</summary>
/// <remarks>
/// Holds for differences that are normal and of one size over the range; look at <see cref="Reliability.ErrorGrowth"/> first. The difference of a log-transformed pair is a ratio.
/// </remarks>
public sealed record LimitsOfAgreement : Result
{
    /// <summary>Mean difference with Student's t interval.</summary>
    public required Estimate Bias { get; init; }

    /// <summary>SD of the differences.</summary>
    public required double StandardDeviation { get; init; }

    /// <summary>SDs on either side of the bias.</summary>
    public required double Multiplier { get; init; }

    /// <summary>Lower limit; standard error s √(1/n + m²/(2(n − 1))), t interval.</summary>
    public required Estimate Lower { get; init; }

    /// <summary>Upper limit, errors as for <see cref="Lower"/>.</summary>
    public required Estimate Upper { get; init; }

    /// <summary>Standard error of a limit by the rule of thumb √(3 s²/n), made for a multiplier near 2.</summary>
    public required double RuleOfThumbError { get; init; }

    /// <summary>Exact interval of the lower limit for normal differences, by the noncentral t law.</summary>
    public required Interval ExactLower { get; init; }

    /// <summary>Exact interval of the upper limit; wider outward than inward.</summary>
    public required Interval ExactUpper { get; init; }

    /// <summary>Differences used.</summary>
    public int N => Bias.N;

    /// <summary>Interval of the lower limit by <see cref="RuleOfThumbError"/>.</summary>
    public Interval RuleOfThumbLower => Around(Lower.Value, RuleOfThumbError, N, ExactLower.Level);

    /// <summary>Interval of the upper limit by <see cref="RuleOfThumbError"/>.</summary>
    public Interval RuleOfThumbUpper => Around(Upper.Value, RuleOfThumbError, N, ExactUpper.Level);

    /// <summary>Limits that hold a share of differences.</summary>
    /// <param name="differences">One an athlete; at least two, not all equal.</param>
    /// <param name="coverage">Share of differences between the limits, above 0 and below 1.</param>
    /// <param name="level">Coverage of the intervals of bias and limits, above 0 and below 1.</param>
    public static LimitsOfAgreement Of(IReadOnlyList<double> differences, double coverage = 0.95, double level = 0.95)
        => WithMultiplier(differences, NormalLaw.TwoSided(coverage), level);

    /// <summary>Limits at bias ± multiplier × SD; the source prints 2, later papers 1.96.</summary>
    /// <param name="differences">One an athlete; at least two, not all equal.</param>
    /// <param name="multiplier">Above 0.</param>
    /// <param name="level">Coverage of the intervals of bias and limits, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Fewer than 2 differences, or all equal.</exception>
    public static LimitsOfAgreement WithMultiplier(IReadOnlyList<double> differences, double multiplier, double level = 0.95)
    {
        Require.Sample(differences, 2, nameof(differences));
        Require.Positive(multiplier, nameof(multiplier));
        var bias = MeanEstimate.Of(differences, level);
        var s = Moments.StandardDeviation(differences);
        if (s <= 0) throw new ArgumentException(FormattableString.Invariant($"All {differences.Count} differences are {differences[0]}; limits need some spread."), nameof(differences));
        var n = differences.Count;
        var error = s * Math.Sqrt(1.0 / n + multiplier * multiplier / (2.0 * (n - 1)));
        var root = Math.Sqrt(n);
        var near = NoncentralStudentLaw.Quantile((1 - level) / 2, n - 1, multiplier * root) * s / root;
        var far = NoncentralStudentLaw.Quantile((1 + level) / 2, n - 1, multiplier * root) * s / root;
        return new()
        {
            Bias = bias,
            StandardDeviation = s,
            Multiplier = multiplier,
            Lower = Limit(bias.Value - multiplier * s, error, n, level),
            Upper = Limit(bias.Value + multiplier * s, error, n, level),
            RuleOfThumbError = Math.Sqrt(3 * s * s / n),
            ExactLower = new(bias.Value - far, bias.Value - near, level),
            ExactUpper = new(bias.Value + near, bias.Value + far, level),
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Limits of agreement", FormattableString.Invariant($"mean difference ± {Multiplier:0.####} SD [blandaltman1986]; exact intervals by the noncentral t law"),
        [
            new("upper limit", Upper.Value) { StandardError = Upper.StandardError, Interval = ExactUpper },
            new("bias", Bias.Value) { StandardError = Bias.StandardError, Interval = Bias.Interval, DegreesOfFreedom = N - 1 },
            new("lower limit", Lower.Value) { StandardError = Lower.StandardError, Interval = ExactLower },
            new("SD of differences", StandardDeviation) { DegreesOfFreedom = N - 1 },
        ])
    { Basis = $"{N} differences" };

    private static Estimate Limit(double value, double error, int n, double level)
        => new(value, error, Around(value, error, n, level), n, "limit of agreement, approximate t interval");

    private static Interval Around(double value, double error, int n, double level)
    {
        var reach = StudentLaw.TwoSided(level, n - 1) * error;
        return new(value - reach, value + reach, level);
    }
}
