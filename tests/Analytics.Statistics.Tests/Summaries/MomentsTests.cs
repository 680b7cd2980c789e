using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Tests.Summaries;

public class MomentsTests
{
    // NIST Statistical Reference Datasets, certified values [nist-strd]. Digits: -log10 of the relative error asked for.
    // Decimals such as 10000000.1 are not exact in binary: 9 digits of the SD are all a double can give there.
    public static TheoryData<string, double, double, double, double> Certified => new()
    {
        { "michelso", 299.852400000000, 0.0790105478190518, 0.535199668621283, 12 },
        { "mavro", 2.00185600000000, 0.000429123454003053, 0.937989183438248, 12 },
        { "lew", -177.435000000000, 277.332168044316, -0.307304800605679, 13.5 },
        { "numacc1", 10000002, 1, -0.5, 15 },
        { "numacc2", 1.2, 0.1, -0.999, 14 },
        { "numacc3", 1000000.2, 0.1, -0.999, 9 },
        { "numacc4", 10000000.2, 0.1, -0.999, 8 },
    };

    [Theory]
    [MemberData(nameof(Certified))]
    public void Moments_NistSet_ReachCertifiedDigits(string set, double mean, double sd, double lagOne, double digits)
    {
        var y = Values(set);
        Oracle.Close(mean, Moments.Mean(y), 1e-15);
        Oracle.Close(sd, Moments.StandardDeviation(y), Math.Pow(10, -digits));
        Oracle.Close(lagOne, Moments.LagOneAutocorrelation(y), Math.Pow(10, -Math.Min(digits, 13)));
    }

    [Fact]
    public void StandardDeviation_ShiftAndScale_FollowsScaleOnly()
    {
        double[] y = [3, 1, 4, 1, 5, 9, 2, 6];
        Oracle.Close(Moments.StandardDeviation(y), Moments.StandardDeviation([.. y.Select(v => v + 1e9)]), 1e-12);
        Oracle.Close(2.5 * Moments.StandardDeviation(y), Moments.StandardDeviation([.. y.Select(v => v * 2.5)]), 1e-14);
    }

    [Fact]
    public void StandardDeviation_EqualValues_IsZero() => Assert.Equal(0, Moments.StandardDeviation([0.1, 0.1, 0.1]));

    [Fact]
    public void Variance_OneValue_SaysHowManyAreNeeded()
    {
        var error = Assert.Throws<ArgumentException>(() => Moments.Variance([4]));
        Assert.Equal("values", error.ParamName);
        Assert.Contains("1 values; at least 2", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Mean_NotANumber_NamesPlaceAndRemedy()
    {
        var error = Assert.Throws<ArgumentException>(() => Moments.Mean([1, double.NaN]));
        Assert.Contains("values[1] is NaN", error.Message, StringComparison.Ordinal);
        Assert.Contains("Leave a missing value out", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void LagOneAutocorrelation_EqualValues_Throws()
        => Assert.Contains("All 3 values are equal", Assert.Throws<ArgumentException>(() => Moments.LagOneAutocorrelation([2, 2, 2])).Message, StringComparison.Ordinal);

    private static double[] Values(string set) => set switch
    {
        "numacc1" => [10000001, 10000003, 10000002],
        "numacc2" => Alternating(1.2, 1.1, 1.3),
        "numacc3" => Alternating(1000000.2, 1000000.1, 1000000.3),
        "numacc4" => Alternating(10000000.2, 10000000.1, 10000000.3),
        _ => Oracle.Column($"nist-{set}.csv", 1),
    };

    private static double[] Alternating(double first, double low, double high)
        => [first, .. Enumerable.Repeat(0, 500).SelectMany(_ => new[] { low, high })];
}
