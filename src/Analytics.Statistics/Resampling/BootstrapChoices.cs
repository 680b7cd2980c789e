namespace Analytics.Statistics.Resampling;

/// <summary>How an interval is read from the resamples [efrontibshirani1993].</summary>
public enum BootstrapMethod
{
    /// <summary>Bias-corrected and accelerated (BCa): percentiles moved for bias and for an error that changes with the value [efron1987].</summary>
    BiasCorrectedAccelerated,

    /// <summary>The (1 − level)/2 and (1 + level)/2 quantiles of the resampled statistics.</summary>
    Percentile,

    /// <summary>The percentiles reflected about the estimate: 2 t − quantile.</summary>
    Basic,

    /// <summary>t − bias ± z SE, bias and SE from the resamples.</summary>
    Normal,
}

/// <summary>Where the acceleration of BCa comes from: a = Σu³/(6 (Σu²)^1.5).</summary>
public enum Acceleration
{
    /// <summary>u = mean of the leave-one-out values less each of them [efrontibshirani1993]. The default.</summary>
    CentredJackknife,

    /// <summary>u = (n − 1) times the estimate less each leave-one-out value, not centred: slightly different for a biased statistic [davisonhinkley1997].</summary>
    UncentredJackknife,

    /// <summary>u from the exact influence function; known here for a mean and for a correlation.</summary>
    ExactInfluence,
}

/// <summary>How a quantile between two resamples is found.</summary>
public enum EndPoint
{
    /// <summary>Type 7: straight interpolation at position (B − 1) p + 1 [hyndmanfan1996]. The default, as everywhere in this library.</summary>
    Type7,

    /// <summary>Position (B + 1) p, interpolated on the scale of normal quantiles, which bends with the tail [davisonhinkley1997].</summary>
    NormalScale,
}

/// <summary>A statistic of chosen rows of the caller's data; a row may stand several times. Must not keep the span.</summary>
/// <param name="rows">Row numbers from 0.</param>
/// <returns>The statistic; NaN where it does not exist for these rows.</returns>
public delegate double RowStatistic(ReadOnlySpan<int> rows);

/// <summary>A statistic of a sample of numbers; may reorder the span, must not keep it.</summary>
/// <param name="sample">The values, a private copy.</param>
/// <returns>The statistic; NaN where it does not exist for these values.</returns>
public delegate double SampleStatistic(Span<double> sample);

/// <summary>How much to resample.</summary>
public sealed record BootstrapOptions
{
    /// <summary>Number of resamples B, at least 100. Tail limits of BCa need several thousand.</summary>
    public int Resamples { get; init; } = 10_000;

    /// <summary>Seed; the same seed gives the same result on any number of threads.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Threads, at least 1. Above 1 the statistic is called from several threads at once.</summary>
    public int Threads { get; init; } = 1;

    internal BootstrapOptions Checked()
    {
        Require.AtLeast(Resamples, 100, nameof(Resamples));
        Require.AtLeast(Threads, 1, nameof(Threads));
        return this;
    }
}
