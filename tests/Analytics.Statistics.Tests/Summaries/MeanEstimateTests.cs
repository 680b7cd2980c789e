using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Tests.Summaries;

public class MeanEstimateTests
{
    // R: t.test(c(-1, 0, 1, 4)) gives 1 and -2.437434882 to 4.437434882.
    [Fact]
    public void Of_FourValues_GivesStudentInterval()
    {
        var mean = MeanEstimate.Of([-1, 0, 1, 4]);
        Assert.Equal(1, mean.Value);
        Assert.Equal(1.080123, mean.StandardError!.Value, 6);
        Assert.Equal(-2.437434882, mean.Interval!.Value.Low, 8);
        Assert.Equal(4.437434882, mean.Interval!.Value.High, 8);
        Assert.Equal(4, mean.N);
    }

    [Fact]
    public void Of_OneValue_StatesNoError() => Assert.Null(MeanEstimate.Of([3]).StandardError);
}
