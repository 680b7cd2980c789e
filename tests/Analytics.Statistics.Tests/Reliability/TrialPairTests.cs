using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class TrialPairTests
{
    [Fact]
    public void Of_Gaps_UsesThoseWithBothAndCountsTheRest()
    {
        var pair = TrialPair.Of(TrialTable.FromPairs([1, 2, 3, 9], [2, 4, 3.5, null]), 0, 1);
        Assert.Equal((3, 1), (pair.Change.N, pair.Error.WithoutRepeat));
        Oracle.Close(3.5 / 3, pair.Change.Value, 1e-14);
        Assert.Contains("3 athletes with both trials; 1 without one of them", pair.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_OneAthlete_NamesThePair()
        => Assert.Contains("1 of 2 athletes did both trial 1 and trial 3", Assert.Throws<ArgumentException>(() => TrialPair.Of(TrialTable.FromRows([[1, 2, 3], [1, 2, null]]), 0, 2)).Message, StringComparison.Ordinal);

    [Fact]
    public void Of_NoSuchTrial_NamesRange()
        => Assert.Contains("second is 2; allowed: 0 to 1", Assert.Throws<ArgumentOutOfRangeException>(() => TrialPair.Of(TrialTable.FromPairs([1, 2], [1, 2]), 0, 2)).Message, StringComparison.Ordinal);

    [Fact]
    public void Of_TrialThatDoesNotVary_HasNoCorrelation()
        => Assert.Null(TrialPair.Of(TrialTable.FromPairs([1, 1, 1], [1, 2, 3]), 0, 1).Correlation);

    // (n − 1)(k − 1)²/(1.5 k − 2): with two trials n − 1, with three 1.6 (n − 1).
    [Fact]
    public void FromNeighbours_DegreesOfFreedom_AllowForSharedTrials()
    {
        Oracle.Close(9, TypicalErrors.FromNeighbours(ReliabilityTables.Of("retest3_first2")).DegreesOfFreedom, 1e-14);
        Oracle.Close(14.4, TypicalErrors.FromNeighbours(ReliabilityTables.Of("retest3")).DegreesOfFreedom, 1e-14);
    }

    // Variance of TE² over 20,000 seeded tables of 6 × 4 against 2/df; its own relative error is about 2 %.
    [Fact]
    public void FromNeighbours_DegreesOfFreedom_MatchSimulation()
    {
        var normal = new Gaussian(31);
        double df = 0;
        var squares = new double[20000];
        for (var t = 0; t < squares.Length; t++)
        {
            var te = TypicalErrors.FromNeighbours(TrialTable.FromRows([.. Enumerable.Range(0, 6).Select(_ => (IReadOnlyList<double?>)[.. Enumerable.Range(0, 4).Select(_ => (double?)normal.Next())])]));
            squares[t] = te.Value * te.Value;
            df = te.DegreesOfFreedom;
        }

        Assert.Equal(2 / df, Analytics.Statistics.Summaries.Moments.Variance(squares), 0.06 * 2 / df);
    }

    [Fact]
    public void FromNeighbours_Gap_PointsToTheOtherWay()
        => Assert.Contains("use FromTrials", Assert.Throws<ArgumentException>(() => TypicalErrors.FromNeighbours(TrialTable.FromPairs([1, 2, 3], [1, 2, null]))).Message, StringComparison.Ordinal);
}
