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
}
