using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class IntraclassCorrelationTests
{
    // Shrout & Fleiss 1979, Table 4: .17 .29 .71 .44 .62 .91.
    [Theory]
    [InlineData(IccForm.OneWaySingle, 0.17)]
    [InlineData(IccForm.AgreementSingle, 0.29)]
    [InlineData(IccForm.ConsistencySingle, 0.71)]
    [InlineData(IccForm.OneWayMean, 0.44)]
    [InlineData(IccForm.AgreementMean, 0.62)]
    [InlineData(IccForm.ConsistencyMean, 0.91)]
    public void Of_ShroutFleiss_MatchesPrint(IccForm form, double printed)
        => Assert.Equal(printed, IntraclassCorrelation.Of(ReliabilityTables.Of("shrout_fleiss"), form).Value, 2);

    // Weir 2005: ICC(3,1) .95 for the spread-out set A, .54 (from memory) for set B with the very same differences.
    [Theory]
    [InlineData("weir_A", 0.95)]
    [InlineData("weir_B", 0.54)]
    public void Of_SameErrorOtherSpread_GivesOtherCorrelation(string set, double printed)
    {
        var table = ReliabilityTables.Of(set);
        Assert.Equal(printed, IntraclassCorrelation.Of(table).Value, 2);
        Assert.Equal(7.6, TypicalErrors.FromTrials(table).Value, 1);
    }

    public static TheoryData<string, IccForm> EveryTableAndForm
    {
        get
        {
            var data = new TheoryData<string, IccForm>();
            foreach (var table in new[] { "shrout_fleiss", "weir_A", "weir_B", "retest3", "retest3_first2" })
                foreach (var form in Enum.GetValues<IccForm>()) data.Add(table, form);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(EveryTableAndForm))]
    public void Of_EveryTableAndForm_AgreesWithR(string name, IccForm form)
    {
        var icc = IntraclassCorrelation.Of(ReliabilityTables.Of(name), form);
        Oracle.Close(Oracle.Value(name, $"{form}"), icc.Value);
        Oracle.Close(Oracle.Value(name, $"{form}_low"), icc.Interval.Low, 1e-9);
        Oracle.Close(Oracle.Value(name, $"{form}_high"), icc.Interval.High, 1e-9);
    }

    [Fact]
    public void Of_MissingTrial_CountsWhoIsLeftOut()
    {
        var icc = IntraclassCorrelation.Of(TrialTable.FromPairs([1, 2, 4, 9], [1.5, 2, 3.5, null]));
        Assert.Equal((3, 1), (icc.Athletes, icc.LeftOut));
    }

    [Fact]
    public void Of_ExactRepeats_IsOne()
    {
        foreach (var form in Enum.GetValues<IccForm>())
        {
            var icc = IntraclassCorrelation.Of(TrialTable.FromPairs([1, 2, 4], [1, 2, 4]), form);
            Assert.Equal((1, 1, 1), (icc.Value, icc.Interval.Low, icc.Interval.High));
        }
    }

    [Fact]
    public void Of_EqualValues_Throws()
        => Assert.Contains("All 4 values are equal", Assert.Throws<ArgumentException>(() => IntraclassCorrelation.Of(TrialTable.FromPairs([2, 2], [2, 2]))).Message, StringComparison.Ordinal);

    [Fact]
    public void Of_OneCompleteAthlete_SaysHowMany()
        => Assert.Contains("1 of 2 athletes", Assert.Throws<ArgumentException>(() => IntraclassCorrelation.Of(TrialTable.FromPairs([2, 3], [2, null]))).Message, StringComparison.Ordinal);

    // Spearman–Brown by hand: 3 × .7 / (1 + 2 × .7) = 0.875.
    [Fact]
    public void OfMean_ThreeTrials_MatchesWorkedValue()
    {
        Oracle.Close(0.875, IntraclassCorrelation.OfMean(0.7, 3), 1e-14);
        Oracle.Close(0.9, IntraclassCorrelation.OfMean(0.7, 3.857142857142857), 1e-14);
    }

    // Weir set A: SD of all 16 scores 31.74875326, ICC(3,1) .947016: 7.307999, below √EMS = 7.556927.
    [Fact]
    public void StandardErrorOfMeasurement_TotalSd_LiesBelowTypicalError()
        => Oracle.Close(7.307999096215362, IntraclassCorrelation.StandardErrorOfMeasurement(31.74875325636163, 0.9470161370489414), 1e-12);

    [Fact]
    public void StandardErrorOfMeasurement_ReliabilityAboveOne_NamesRange()
        => Assert.Contains("reliability is 1.2; allowed: 0 to 1", Assert.Throws<ArgumentOutOfRangeException>(() => IntraclassCorrelation.StandardErrorOfMeasurement(5, 1.2)).Message, StringComparison.Ordinal);

    // R: psych::ICC(x, lmer = FALSE); its p is 1 − pf(…), so small ones are compared absolutely.
    [Theory]
    [InlineData("shrout_fleiss")]
    [InlineData("weir_A")]
    [InlineData("weir_B")]
    [InlineData("retest3")]
    public void FTest_EveryForm_AgreesWithPsych(string name)
    {
        (string, IccForm)[] forms =
        [
            ("ICC1", IccForm.OneWaySingle), ("ICC2", IccForm.AgreementSingle), ("ICC3", IccForm.ConsistencySingle),
            ("ICC1k", IccForm.OneWayMean), ("ICC2k", IccForm.AgreementMean), ("ICC3k", IccForm.ConsistencyMean),
        ];
        foreach (var (peer, form) in forms)
        {
            var icc = IntraclassCorrelation.Of(ReliabilityTables.Of(name), form);
            Oracle.Close(PeerOracle.Value(name, $"{peer}_F"), icc.F, 1e-10);
            Assert.Equal((PeerOracle.Value(name, $"{peer}_df1"), PeerOracle.Value(name, $"{peer}_df2")), (icc.DfBetween, icc.DfError));
            Assert.Equal(PeerOracle.Value(name, $"{peer}_p"), icc.P, 1e-13);
        }
    }

    [Fact]
    public void Names_EveryForm_ArePairedAsInTheLiterature()
        => Assert.Equal(
            ["ICC(1,1) ICC(1)", "ICC(2,1) ICC(A,1)", "ICC(3,1) ICC(C,1)", "ICC(1,k) ICC(k)", "ICC(2,k) ICC(A,k)", "ICC(3,k) ICC(C,k)"],
            Enum.GetValues<IccForm>().Select(f => $"{f.ShroutFleissName()} {f.McGrawWongName()}"));

    [Fact]
    public void Sheet_MissingTrial_SaysHowManyWereLeftOut()
        => Assert.Contains("3 athletes, 2 trials; 1 left out for a missing trial", IntraclassCorrelation.Of(TrialTable.FromPairs([1, 2, 4, 9], [1.5, 2, 3.5, null])).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Sheet_NoDifferenceBetweenAthletes_SaysSo()
    {
        var icc = IntraclassCorrelation.Of(TrialTable.FromPairs([1, 3, 2], [3, 1, 2.1]));
        Assert.False(icc.FoundDifferences);
        Assert.Contains("No between-athlete variance was found", icc.ToString(), StringComparison.Ordinal);
    }

    // By hand: .9 × .3/(.7 × .1) = 3.857142857.
    [Fact]
    public void TrialsFor_SevenToNine_MatchesWorkedValue()
        => Oracle.Close(3.857142857142857, IntraclassCorrelation.TrialsFor(0.7, 0.9), 1e-14);

    [Fact]
    public void Of_NoDegreesOfFreedom_CannotHappenSilently()
        => Assert.Contains("1 of 1 athletes", Assert.Throws<ArgumentException>(() => IntraclassCorrelation.Of(TrialTable.FromPairs([1], [2]))).Message, StringComparison.Ordinal);

    // Tables of noise, where agreement limits fall far below 0: ordered limits, none NaN.
    [Fact]
    public void Interval_TablesOfNoise_IsOrderedAndNeverNaN()
    {
        var normal = new Gaussian(5);
        for (var t = 0; t < 500; t++)
        {
            var table = TrialTable.FromRows([.. Enumerable.Range(0, 3 + t % 4).Select(_ => (IReadOnlyList<double?>)[.. Enumerable.Range(0, 2 + t % 3).Select(j => (double?)(normal.Next() + 3 * j))])]);
            foreach (var form in Enum.GetValues<IccForm>())
            {
                var icc = IntraclassCorrelation.Of(table, form);
                Assert.True(icc.Interval.Low <= icc.Value + 1e-12 && icc.Value <= icc.Interval.High + 1e-12 && icc.Interval.High <= 1, $"{form} {icc.Interval} {icc.Value}");
            }
        }
    }
}
