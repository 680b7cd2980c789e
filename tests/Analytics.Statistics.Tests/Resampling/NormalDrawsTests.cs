using Analytics.Statistics.Resampling;

namespace Analytics.Statistics.Tests.Resampling;

public sealed class NormalDrawsTests
{
    // SplitMix64 [steele2014] and the normal quantile worked in Python 3.12 with whole numbers and statistics.NormalDist: places Finish((seed xor 0x6E6F726D616C) + step).
    [Theory]
    [InlineData(1, new[] { -0.6529760015567345, 1.3230767617992767, -0.8226789314908033, -2.0215858445234858 })]
    [InlineData(2, new[] { -0.31088035446360684, -1.4103960280165933, 0.763374718828409, -0.016681166918446923 })]
    public void Next_SeedOneAndTwo_AreTheSameOnEveryMachine(ulong seed, double[] expected)
    {
        var draws = new NormalDraws(seed);

        Assert.All(expected, value => Assert.Equal(value, draws.Next(), 1e-13));
    }

    // Standard errors of 200,000 draws: mean 0.0022, SD 0.0016, skewness √(6/n) = 0.0055, kurtosis √(24/n) = 0.011; allowed four of each.
    [Fact]
    public void Next_ManyDraws_HaveTheMomentsOfTheNormalLaw()
    {
        const int n = 200_000;
        var draws = new NormalDraws(5);
        double[] all = [.. Enumerable.Range(0, n).Select(_ => draws.Next())];

        Assert.Equal(0, all.Average(), 0.0090);
        Assert.Equal(1, Math.Sqrt(all.Average(z => z * z)), 0.0064);
        Assert.Equal(0, all.Average(z => z * z * z), 4 * Math.Sqrt(15.0 / n));
        Assert.Equal(3, all.Average(z => z * z * z * z), 4 * Math.Sqrt(96.0 / n));
        // Share beyond 1.96 and 3.29: 5 % and 0.1 % (tables of the normal law); binomial errors 0.0005 and 0.00007.
        Assert.Equal(0.05, all.Count(z => Math.Abs(z) > 1.959964) / (double)n, 0.002);
        Assert.Equal(0.001, all.Count(z => Math.Abs(z) > 3.290527) / (double)n, 0.0003);
    }

    // Correlation of one draw with the next: 0 but for 1/√n = 0.0022.
    [Fact]
    public void Next_OneAfterTheOther_DoNotGoTogether()
    {
        var draws = new NormalDraws(9);
        double[] all = [.. Enumerable.Range(0, 200_001).Select(_ => draws.Next())];

        Assert.Equal(0, all.Zip(all.Skip(1), (a, b) => a * b).Average(), 0.009);
    }

    // Streams that ran into each other would bring the same values again. By chance alone two of a million values of 52 bits meet once in 9,000 such tests.
    [Fact]
    public void Streams_OfNeighbouringSeeds_DoNotRunIntoEachOther()
    {
        var seen = new HashSet<double>();
        for (ulong seed = 0; seed < 1000; seed++)
        {
            var draws = new NormalDraws(seed);
            for (var i = 0; i < 1000; i++) Assert.True(seen.Add(draws.NextUniform()), $"draw {i} of seed {seed} came before");
        }
    }

    // 1,000 pairs of neighbours, 200 draws each: correlations with mean 0 and SD 1/√200 = 0.0707; errors of those 0.0022 and 0.0016.
    [Fact]
    public void Streams_OfNeighbouringSeeds_DoNotGoTogether()
    {
        double[] correlations = [.. Enumerable.Range(0, 1000).Select(seed =>
        {
            var (a, b) = (new NormalDraws((ulong)seed), new NormalDraws((ulong)seed + 1));
            return Enumerable.Range(0, 200).Average(_ => a.Next() * b.Next());
        })];

        Assert.Equal(0, correlations.Average(), 0.009);
        Assert.Equal(0.0707, Math.Sqrt(correlations.Average(r => r * r)), 0.0064);
    }

    // Which seeds give a first word of ones and of zeros was worked out backwards, the scrambling being one to one.
    [Fact]
    public void NextUniform_AtItsEnds_IsInsideZeroAndOne()
    {
        Assert.Equal(1 - Math.Pow(2, -53), new NormalDraws(2201675418157249617).NextUniform());
        Assert.Equal(Math.Pow(2, -53), new NormalDraws(7046136883886744199).NextUniform());
        // Quantiles at 1 ∓ 2⁻⁵³: R 4.2.2, qnorm(2^-53).
        Assert.Equal(8.2095361516013856, new NormalDraws(2201675418157249617).Next(), 1e-9);
        Assert.Equal(-8.2095361516013856, new NormalDraws(7046136883886744199).Next(), 1e-9);
    }

    // The first resample of a seed is not made of the words that this seed's values are made of. A word gives four rows; the upper half, which gives the third, is what a value follows.
    [Fact]
    public void Draws_AndResamplesOfTheSameSeed_DoNotGoTogether()
    {
        double[] together = [.. Enumerable.Range(0, 400).Select(seed =>
        {
            var draws = new NormalDraws((ulong)seed);
            var resamples = new List<int[]>();
            Bootstrap.OfRows(40, rows =>
            {
                resamples.Add(rows.ToArray());
                return rows[0];
            }, new() { Resamples = 100, Seed = (ulong)seed });
            // The sample itself is asked first.
            return Enumerable.Range(0, 10).Average(word => (draws.NextUniform() - 0.5) * (resamples[1][4 * word + 2] - 19.5));
        })];

        // SD of one product is 0.289 × 11.5 = 3.3, of a mean of 10 of them 1.05, of the mean of 400 of these 0.053; made of the same words the mean would be 3.3.
        Assert.Equal(0, together.Average(), 0.21);
    }
}
