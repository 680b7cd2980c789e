using Analytics.Statistics.Change;

namespace Analytics.Statistics.Tests.Change;

public class ReliableChangeTests
{
    // Jacobson & Truax 1991 print RC = -3.16 for SD 7.5, r .80, 47.5 to 32.5 (from memory).
    [Fact]
    public void Index_PublishedExample_Matches() => Assert.Equal(-3.16, ReliableChange.Index(47.5, 32.5, 7.5, 0.80), 2);

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(20)]
    public void PercentLimits_TabledCases_AgreeWithR(int cv)
    {
        var limits = ReliableChange.PercentLimits(cv);
        Oracle.Close(Oracle.Value($"percent_limits_{cv}", "low"), limits.Low);
        Oracle.Close(Oracle.Value($"percent_limits_{cv}", "high"), limits.High);
    }

    [Fact]
    public void Index_PerfectReliability_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => ReliableChange.Index(1, 2, 3, 1));
}
