using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class VarianceComponentsTests
{
    // R: sums of squares by lm, interval by generalised least squares (reliability.R).
    [Theory]
    [InlineData("gaps", IccForm.ConsistencySingle)]
    [InlineData("gaps_oneway", IccForm.OneWaySingle)]
    [InlineData("full", IccForm.ConsistencySingle)]
    [InlineData("weir_B_gaps", IccForm.ConsistencySingle)]
    public void Of_TableWithGaps_AgreesWithR(string name, IccForm form)
    {
        var found = VarianceComponents.Of(Table(name), form);
        Oracle.Close(PeerOracle.Value(name, "between"), found.BetweenVariance, 1e-9);
        Oracle.Close(PeerOracle.Value(name, "error"), found.ErrorVariance, 1e-9);
        Oracle.Close(PeerOracle.Value(name, "icc"), found.Icc, 1e-9);
        Oracle.Close(PeerOracle.Value(name, "low"), found.Interval.Low, 1e-8);
        Oracle.Close(PeerOracle.Value(name, "high"), found.Interval.High, 1e-8);
        Oracle.Close(PeerOracle.Value(name, "F"), found.F, 1e-9);
        Oracle.Close(PeerOracle.Value(name, "p"), found.P, 1e-8);
        Assert.Equal((PeerOracle.Value(name, "df1"), PeerOracle.Value(name, "df2")), (found.DfBetween, found.DfError));
    }

    [Theory]
    [InlineData(IccForm.OneWaySingle)]
    [InlineData(IccForm.ConsistencySingle)]
    [InlineData(IccForm.OneWayMean)]
    [InlineData(IccForm.ConsistencyMean)]
    public void Of_CompleteTable_EqualsTheUsualCorrelation(IccForm form)
    {
        foreach (var name in new[] { "shrout_fleiss", "weir_A", "weir_B", "retest3" })
        {
            var table = ReliabilityTables.Of(name);
            var (icc, usual) = (VarianceComponents.Of(table, form), IntraclassCorrelation.Of(table, form));
            Oracle.Close(usual.Value, icc.Icc, 1e-10);
            Oracle.Close(usual.Interval.Low, icc.Interval.Low, 1e-9);
            Oracle.Close(usual.Interval.High, icc.Interval.High, 1e-9);
            Oracle.Close(usual.F, icc.F, 1e-10);
        }
    }

    [Fact]
    public void Of_EveryAthleteWithAValue_IsUsed()
    {
        var found = VarianceComponents.Of(TrialTable.FromRows([[1, 2, 1], [4, null, 5], [7, 8, null], [3, null, null], [null, null, null]]));
        Assert.Equal((4, 1, 8), (found.Athletes, found.WithoutValue, found.Observations));
        Assert.Contains("8 values of 4 athletes in 3 trials; 1 athletes have no value", found.ToString(), StringComparison.Ordinal);
    }

    // 4,000 seeded tables with gaps and true correlation 0.6: 95 % less or more than 3 standard errors of 0.34 %.
    [Fact]
    public void Interval_TablesWithGaps_HoldsTheTruthAtTheStatedRate()
    {
        var normal = new Gaussian(20);
        var gaps = new Random(21);
        const int tables = 4000;
        var held = 0;
        for (var t = 0; t < tables; t++)
        {
            var rows = Enumerable.Range(0, 12).Select(_ =>
            {
                var level = Math.Sqrt(0.6) * normal.Next();
                return (IReadOnlyList<double?>)[.. Enumerable.Range(0, 3).Select(j => gaps.NextDouble() < 0.3 && j > 0 ? (double?)null : level + j + Math.Sqrt(0.4) * normal.Next())];
            }).ToList();
            if (VarianceComponents.Of(TrialTable.FromRows(rows)).Interval.Contains(0.6)) held++;
        }

        Assert.InRange((double)held / tables, 0.95 - 3 * 0.00345, 0.95 + 3 * 0.00345);
    }

    // Both athletes average 2: between (0 − 4)/2 = −2.
    [Fact]
    public void Of_NoRealSpread_SaysSoAndKeepsTheNegativeEstimate()
    {
        var found = VarianceComponents.Of(TrialTable.FromPairs([1, 3], [3, 1]));
        Assert.Equal(-2, found.BetweenVariance, 12);
        Assert.Null(found.BetweenStandardDeviation);
        Assert.Contains("no between-athlete variance was found (estimate -2)", found.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_AgreementForm_PointsToTheOtherType()
        => Assert.Contains("needs a complete table", Assert.Throws<ArgumentException>(() => VarianceComponents.Of(Table("gaps"), IccForm.AgreementSingle)).Message, StringComparison.Ordinal);

    [Fact]
    public void Of_NoRepeat_SaysThatErrorHasNoDegreesOfFreedom()
        => Assert.Contains("leave no degrees of freedom for error", Assert.Throws<ArgumentException>(() => VarianceComponents.Of(TrialTable.FromPairs([1, 2, 3], [null, null, 4]))).Message, StringComparison.Ordinal);

    [Fact]
    public void Of_OneAthlete_Throws()
        => Assert.Contains("at least 2 are needed", Assert.Throws<ArgumentException>(() => VarianceComponents.Of(TrialTable.FromPairs([1], [2]))).Message, StringComparison.Ordinal);

    [Fact]
    public void Of_EqualValues_Throws()
        => Assert.Contains("are equal but for the trial", Assert.Throws<ArgumentException>(() => VarianceComponents.Of(TrialTable.FromPairs([1, 1], [2, 2]))).Message, StringComparison.Ordinal);

    private static TrialTable Table(string name)
    {
        var full = ReliabilityTables.Of(name == "weir_B_gaps" ? "weir_B" : "retest3");
        (int, int)[] gaps = name switch
        {
            "full" => [],
            "weir_B_gaps" => [(1, 1), (5, 0)],
            _ => [(0, 2), (3, 0), (6, 1), (6, 2), (8, 1)],
        };
        return TrialTable.FromRows([.. Enumerable.Range(0, full.Athletes)
            .Select(i => (IReadOnlyList<double?>)[.. Enumerable.Range(0, full.Trials).Select(j => gaps.Contains((i, j)) ? null : full[i, j])])]);
    }
}
