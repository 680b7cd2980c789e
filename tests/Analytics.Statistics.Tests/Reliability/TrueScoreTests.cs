using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class TrueScoreTests
{
    // Worked by the formulas of Weir 2005: x 60, M 50, SD 8, r .85.
    [Fact]
    public void Of_WorkedExample_Matches()
    {
        var score = TrueScore.Of(60, 50, 8, 0.85);
        Oracle.Close(58.5, score.Value, 1e-14);
        Assert.Equal(2.856571371, score.ErrorOfTrueScore, 9);
        Assert.Equal(4.214261501, score.ErrorOfNewScore, 9);
    }

    // Weir 2005 set A prints SEE 7.1 and SEP 10.2.
    [Fact]
    public void Of_WeirSetA_MatchesPrint()
    {
        var score = TrueScore.Of(156, 156, 31.74875325636163, 0.9470161370489414);
        Assert.Equal(7.1, score.ErrorOfTrueScore, 1);
        Assert.Equal(10.2, score.ErrorOfNewScore, 1);
    }
}
