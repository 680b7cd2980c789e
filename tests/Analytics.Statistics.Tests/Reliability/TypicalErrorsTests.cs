using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class TypicalErrorsTests
{
    [Theory]
    [MemberData(nameof(ReliabilityTables.Names), MemberType = typeof(ReliabilityTables))]
    public void FromTrials_EveryTable_AgreesWithR(string name)
    {
        var te = TypicalErrors.FromTrials(ReliabilityTables.Of(name));
        Oracle.Close(Oracle.Value(name, "TE"), te.Value);
        Assert.Equal(Oracle.Value(name, "df"), te.DegreesOfFreedom);
        Oracle.Close(Oracle.Value(name, "TE_low"), te.Interval().Low);
        Oracle.Close(Oracle.Value(name, "TE_high"), te.Interval().High);
        Oracle.Close(Oracle.Value(name, "TE_low90"), te.Interval(0.90).Low);
        Oracle.Close(Oracle.Value(name, "TE_high90"), te.Interval(0.90).High);
    }

    // Residual of lm(y ~ athlete + trial) in R on the same table with five values taken out.
    [Fact]
    public void FromTrials_Gaps_FitsAdditiveModelAndCountsTheSingleTrial()
    {
        var full = ReliabilityTables.Of("retest3");
        (int, int)[] gaps = [(0, 2), (3, 0), (6, 1), (6, 2), (8, 1)];
        var te = TypicalErrors.FromTrials(TrialTable.FromRows([.. Enumerable.Range(0, 10)
            .Select(i => (IReadOnlyList<double?>)[.. Enumerable.Range(0, 3).Select(j => gaps.Contains((i, j)) ? null : full[i, j])])]));
        Oracle.Close(Oracle.Value("retest3_gaps", "TE"), te.Value);
        Assert.Equal(Oracle.Value("retest3_gaps", "df"), te.DegreesOfFreedom);
        Assert.Equal((9, 1), (te.Athletes, te.WithoutRepeat));
    }

    // Two sets of trials no athlete links: each has its own mean shift. Differences 1, 2 leave squares 0.5 about their mean,
    // differences 0, 2 leave 2; half of each is error of single trials: TE² = (0.25 + 1) / 2 degrees.
    [Fact]
    public void FromTrials_UnlinkedTrials_CountsRankRight()
    {
        var te = TypicalErrors.FromTrials(TrialTable.FromRows(
            [[1, 2, null, null], [3, 5, null, null], [null, null, 4, 4], [null, null, 6, 8]]));
        Assert.Equal(2, te.DegreesOfFreedom);
        Oracle.Close(Math.Sqrt(0.625), te.Value, 1e-12);
    }

    [Fact]
    public void FromTrials_CommonGain_IsNotError()
        => Assert.Equal(0, TypicalErrors.FromTrials(TrialTable.FromPairs([10, 20, 30], [15, 25, 35])).Value, 12);

    // Pooled within groups: residual SD of the NIST one-way set SiRstv, certified 0.104076068334656.
    [Fact]
    public void FromAttempts_NistSiRstv_IsCertifiedResidualSd()
    {
        var groups = Oracle.Rows("nist-sirstv.csv").GroupBy(r => r[0]).Select(g => (IReadOnlyList<double>)[.. g.Select(r => Oracle.Number(r[1]))]).ToList();
        var te = TypicalErrors.FromAttempts(groups);
        Oracle.Close(0.104076068334656, te.Value, 1e-12);
        Assert.Equal(20, te.DegreesOfFreedom);
    }

    // One subject, six trials: SD 2.8 (conference slides, 2001, cited in the notes to Hopkins 2000).
    [Fact]
    public void FromAttempts_OneSubject_IsTheirSd()
    {
        var te = TypicalErrors.FromAttempts([[72, 76, 74, 79, 79, 77], [80]]);
        Assert.Equal(2.8, te.Value, 1);
        Assert.Equal((5.0, 1, 1), (te.DegreesOfFreedom, te.Athletes, te.WithoutRepeat));
    }

    [Fact]
    public void FromTrials_OnePair_SaysWhatIsNeeded()
        => Assert.Contains("1 of 2 athletes have a repeat", Assert.Throws<ArgumentException>(() => TypicalErrors.FromTrials(TrialTable.FromPairs([1, 2], [2, null]))).Message, StringComparison.Ordinal);

    [Fact]
    public void FromAttempts_NoRepeat_Throws()
        => Assert.Contains("None of 2 athletes", Assert.Throws<ArgumentException>(() => TypicalErrors.FromAttempts([[1], [2]])).Message, StringComparison.Ordinal);

    [Fact]
    public void Known_HasNoWidthAndNormalMultiplier()
    {
        var te = TypicalError.Known(3, "published");
        Assert.Equal((3, 3), (te.Interval().Low, te.Interval().High));
        Oracle.Close(8.315422946098066, te.DetectableChange(), 1e-12); // R: 3 * qnorm(.975) * sqrt(2)
        Oracle.Close(6.97852292206004, te.DetectableChange(0.90), 1e-12);
    }

    [Fact]
    public void Known_Zero_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => TypicalError.Known(0, "published"));

    // Weir 2005 prints MD = SEM × 1.96 × √2; R: t instead of z for 7 degrees of freedom, qt(.975, 7) = 2.364624.
    [Fact]
    public void DetectableChange_FewDegreesOfFreedom_IsLargerThanTheUsualFormula()
    {
        var te = TypicalErrors.FromTrials(ReliabilityTables.Of("weir_A"));
        Oracle.Close(20.94634754095381, te.DetectableChangeOfKnownError(), 1e-12);
        Oracle.Close(20.94634754095381 * 2.364624251592784 / 1.959963984540054, te.DetectableChange(), 1e-10);
        var change = te.MinimalDetectableChange();
        Oracle.Close(te.DetectableChange(), change.Value, 1e-14);
        Oracle.Close(te.Interval().High / te.Value, change.Interval!.Value.High / change.Value, 1e-12);
    }

    [Fact]
    public void Sheet_NamesMethodDegreesOfFreedomAndWhoIsMissing()
    {
        var text = TypicalErrors.FromTrials(TrialTable.FromPairs([1, 2, 4, 9], [1.5, 2, 3.5, null])).ToString();
        Assert.Contains("3 athletes with a repeat; 1 without a repeat say nothing about error", text, StringComparison.Ordinal);
        Assert.Contains("[hopkins2000]", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_ExactRepeats_WarnsOfCopiedValues()
        => Assert.Contains("copied values", TypicalErrors.FromTrials(TrialTable.FromPairs([1, 2, 3], [2, 3, 4])).ToString(), StringComparison.Ordinal);

    [Fact]
    public void FromAttempts_Infinity_NamesPlace()
        => Assert.Contains("values[1] is", Assert.Throws<ArgumentException>(() => TypicalErrors.FromAttempts([[1, double.NegativeInfinity]])).Message, StringComparison.Ordinal);
}
