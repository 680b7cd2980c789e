using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class CoefficientOfVariationTests
{
    [Theory]
    [MemberData(nameof(ReliabilityTables.Names), MemberType = typeof(ReliabilityTables))]
    public void FromTrials_EveryTable_AgreesWithR(string name)
    {
        var cv = CoefficientOfVariation.FromTrials(ReliabilityTables.Of(name));
        Oracle.Close(Oracle.Value(name, "CV"), cv.Percent);
        Oracle.Close(Oracle.Value(name, "CV_low"), cv.Interval().Low);
        Oracle.Close(Oracle.Value(name, "CV_high"), cv.Interval().High);
        Oracle.Close(Oracle.Value(name, "CV_lognormal"), cv.LogNormalPercent);
        Oracle.Close(Oracle.Value(name, "ln_TE"), cv.LogError.Value);
    }

    [Fact]
    public void FromTrials_ChangeOfUnit_KeepsPercent()
    {
        var kilograms = ReliabilityTables.Of("retest3");
        Oracle.Close(
            CoefficientOfVariation.FromTrials(kilograms).Percent,
            CoefficientOfVariation.FromTrials(kilograms.Select(v => v / 0.45359237)).Percent, 1e-9);
    }

    // exp(0.0139064519505839), R.
    [Fact]
    public void Factor_ThreeTrials_AgreesWithR()
        => Oracle.Close(1.014003596442913, CoefficientOfVariation.FromTrials(ReliabilityTables.Of("retest3")).Factor);

    [Fact]
    public void FromTrials_Zero_NamesValue()
        => Assert.Contains("A trial is 0; a percentage error needs values above 0", Assert.Throws<ArgumentException>(() => CoefficientOfVariation.FromTrials(TrialTable.FromPairs([0, 1], [1, 2]))).Message, StringComparison.Ordinal);

    // Same within-athlete ratios: 100 (exp(SD of logs) − 1) by R: sd(log(c(100, 110))) = 0.0673945.
    [Fact]
    public void FromAttempts_TwoAttempts_MatchesLogSd()
        => Oracle.Close(100 * (Math.Exp(0.067394474455747172) - 1), CoefficientOfVariation.FromAttempts([[100, 110], [200, 220]]).Percent, 1e-10);

    [Fact]
    public void DetectableChange_RiseIsLargerThanFall()
    {
        var change = CoefficientOfVariation.FromTrials(ReliabilityTables.Of("retest3")).DetectableChange();
        Oracle.Close(1, (1 + change.High / 100) * (1 + change.Low / 100), 1e-12);
        Assert.True(change.High > -change.Low);
    }
}
