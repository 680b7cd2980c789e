using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Resampling;

/// <summary>A stream of standard normal values that depends on its seed alone, on every machine: quantiles of uniform words of SplitMix64 [steele2014].</summary>
/// <remarks>
/// All streams run along one ring of 2⁶⁴ words; a seed is scrambled into the place where its stream begins. No two of the seeds 0 to 9,999 begin within 10¹⁰ words of each other,
/// nor does any of them of a stream of <see cref="Bootstrap"/> with such a seed, so what is drawn here may be resampled with the same seed.
/// </remarks>
/// <param name="seed">The seed.</param>
public sealed class NormalDraws(ulong seed)
{
    // "normal" in letters: the streams of the bootstrap begin elsewhere.
    private const ulong Apart = 0x6E6F726D616C;

    private ulong _position = new ResampleStream(seed ^ Apart, 2, 1).Start(0);

    /// <summary>The next uniform value, above 0 and below 1: an odd multiple of 2⁻⁵³.</summary>
    // 52 bits and a half fit into a double; 53 and a half would round up to 1.
    public double NextUniform() => ((ResampleStream.Next(ref _position) >> 12) + 0.5) * (1.0 / (1UL << 52));

    /// <summary>The next standard normal value.</summary>
    public double Next() => NormalLaw.Quantile(NextUniform());
}
