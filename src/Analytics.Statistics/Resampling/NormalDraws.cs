using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Resampling;

/// <summary>A stream of standard normal values that depends on its seed alone, on every machine: quantiles of uniform words of SplitMix64 [steele2014].</summary>
/// <param name="seed">The seed.</param>
public sealed class NormalDraws(ulong seed)
{
    // As many steps apart as two streams of neighbouring seeds will ever be long.
    private ulong _position = new ResampleStream(seed, 2, 1).Start(0);

    /// <summary>The next uniform value, above 0 and below 1, in steps of 2⁻⁵³.</summary>
    public double NextUniform() => ((ResampleStream.Next(ref _position) >> 11) + 0.5) * (1.0 / (1UL << 53));

    /// <summary>The next standard normal value.</summary>
    public double Next() => NormalLaw.Quantile(NextUniform());
}
