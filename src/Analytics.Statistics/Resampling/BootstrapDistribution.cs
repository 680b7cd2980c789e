using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Resampling;

/// <summary>A statistic and its values in all resamples; intervals are read from it.</summary>
public sealed record BootstrapDistribution : Result
{
    private BootstrapDistribution()
    {
    }

    /// <summary>What was estimated, for print.</summary>
    public string What { get; init; } = "statistic";

    /// <summary>What is drawn: values, rows or athletes.</summary>
    public string UnitName { get; init; } = "values";

    /// <summary>The statistic of the data.</summary>
    public required double Estimate { get; init; }

    /// <summary>The statistic of each resample in the order drawn, those left out where it does not exist.</summary>
    public required IReadOnlyList<double> Statistics { get; init; }

    /// <summary>Units drawn per resample.</summary>
    public required int Units { get; init; }

    /// <summary>Seed; null when the resamples were given.</summary>
    public required ulong? Seed { get; init; }

    /// <summary>Resamples in which the statistic does not exist (a correlation of rows that are all alike).</summary>
    public required int Undefined { get; init; }

    /// <summary>The statistic without each unit in turn.</summary>
    public IReadOnlyList<double> LeaveOneOut { get; init; } = [];

    /// <summary>Exact influence of each unit; null where the library does not know it.</summary>
    public IReadOnlyList<double>? Influence { get; init; }

    /// <summary>Mean of the resampled statistics less the estimate.</summary>
    public required double Bias { get; init; }

    /// <summary>Standard deviation of the resampled statistics, divisor B − 1.</summary>
    public required double StandardError { get; init; }

    /// <summary>Resamples whose statistic lies below the estimate.</summary>
    public required int Below { get; init; }

    /// <summary>
    /// Resamples whose statistic equals the estimate. Sums in another order differ in the last digit, so equal means to 12 digits.
    /// </summary>
    public required int Equal { get; init; }

    /// <summary>
    /// Bias correction z₀ = Φ⁻¹(share of resamples below the estimate); a resample equal to the estimate counts one half. Null when all lie on
    /// one side.
    /// </summary>
    public double? BiasCorrection
    {
        get
        {
            var share = (Below + 0.5 * Equal) / Statistics.Count;
            return share is > 0 and < 1 ? NormalLaw.Quantile(share) : null;
        }
    }

    /// <summary>Standard error by the jackknife: √((n − 1)/n Σ(t₍ᵢ₎ − mean)²); null when a leave-one-out value does not exist.</summary>
    public double? JackknifeStandardError => HasLeaveOneOut ? Math.Sqrt((Units - 1.0) / Units * Jackknife(true).Sum(u => u * u)) : null;

    /// <summary>Bias by the jackknife: (n − 1)(mean of the leave-one-out values − estimate); null when one of them does not exist.</summary>
    public double? JackknifeBias => HasLeaveOneOut ? (Units - 1) * (LeaveOneOut.Average() - Estimate) : null;

    private bool HasLeaveOneOut => LeaveOneOut.Count > 0 && LeaveOneOut.All(double.IsFinite);

    /// <summary>The acceleration a = Σu³/(6 (Σu²)^1.5); null when no unit has any influence or a leave-one-out value does not exist.</summary>
    /// <param name="source">Which u.</param>
    /// <exception cref="NotSupportedException">The exact influence of this statistic is not known here.</exception>
    public double? AccelerationBy(Acceleration source)
    {
        var u = source switch
        {
            Acceleration.ExactInfluence => Influence
                ?? throw new NotSupportedException($"No exact influence function of this {What} is known; use {nameof(Acceleration.CentredJackknife)}."),
            _ => Jackknife(source == Acceleration.CentredJackknife),
        };
        // Enumerable.Max passes over NaN, which stands for a leave-one-out value that does not exist.
        if (u.Any(double.IsNaN)) return null;
        var largest = u.Max(Math.Abs);
        if (!(largest > 1e-12 * Math.Abs(Estimate) && double.IsFinite(largest))) return null;
        // Scaled first, so that cubes of small units do not vanish.
        double squares = 0, cubes = 0;
        foreach (var value in u)
        {
            var v = value / largest;
            squares += v * v;
            cubes += v * v * v;
        }

        return cubes / (6 * Math.Pow(squares, 1.5));
    }

    /// <summary>An interval.</summary>
    /// <param name="method">Which; BCa when nothing is said.</param>
    /// <param name="level">Nominal coverage, above 0 and below 1.</param>
    /// <param name="endPoint">How a quantile between two resamples is found.</param>
    /// <param name="acceleration">Where the acceleration of BCa comes from.</param>
    public BootstrapInterval Interval(
        BootstrapMethod method = BootstrapMethod.BiasCorrectedAccelerated, double level = 0.95, EndPoint endPoint = EndPoint.Type7,
        Acceleration acceleration = Acceleration.CentredJackknife)
        => IntervalReader.Read(this, method, Require.Share(level, nameof(level)), endPoint, acceleration);

    /// <inheritdoc/>
    public override ResultSheet Sheet() => BootstrapSheet.Of(this);

    internal static BootstrapDistribution Of(double estimate, double[] statistics, ulong? seed, int units)
    {
        if (!double.IsFinite(estimate))
            throw new ArgumentException(FormattableString.Invariant($"The statistic of the data themselves is {estimate}; it must be a finite number before it can be resampled."));
        var (defined, scatter) = (statistics, ResampleScatter.Of(statistics, estimate));
        if (!scatter.IsFinite)
        {
            defined = Array.FindAll(statistics, double.IsFinite);
            scatter = ResampleScatter.Of(defined, estimate);
        }

        var n = defined.Length;
        return new()
        {
            Estimate = estimate,
            Statistics = defined,
            Units = units,
            Seed = seed,
            Undefined = statistics.Length - n,
            Bias = scatter.Bias,
            StandardError = scatter.StandardError,
            Below = scatter.Below,
            Equal = n - scatter.Below - scatter.Above,
        };
    }

    private double[] Jackknife(bool centred)
    {
        var from = centred ? LeaveOneOut.Average() : Estimate;
        return [.. LeaveOneOut.Select(t => from - t)];
    }
}
