using Analytics.Statistics.Change;

namespace Analytics.Statistics.Tests.Change;

public class FlagRatesTests
{
    public static TheoryData<string> NormalMultipliers => Oracle.Cases("normal_multiplier_");

    [Theory]
    [MemberData(nameof(NormalMultipliers))]
    public void NormalMultiplier_EstimatedError_AgreesWithR(string name)
        => Oracle.Close(Oracle.Value(name, "rate"), FlagRates.NormalMultiplier(Degrees(name)), 1e-9);

    [Theory]
    [MemberData(nameof(NormalMultipliers))]
    public void ClearRate_StandardRuleUnchanged_IsFivePercent(string name)
        => Oracle.Close(0.05, BeyondErrorRule.Standard.ClearRate(0, 0, Degrees(name)), 1e-8);

    [Theory]
    [InlineData(5)]
    [InlineData(9)]
    [InlineData(19)]
    [InlineData(49)]
    [InlineData(98)]
    public void OfOneStudy_Quantiles_AgreeWithR(int df)
    {
        foreach (var q in new[] { 0.05, 0.25, 0.5, 0.75, 0.95 })
            Oracle.Close(Oracle.Value($"one_study_{df}", FormattableString.Invariant($"q{q}")), FlagRates.OfOneStudy(q, df), 1e-9);
    }

    // Known error: normal law; 9 and 19 degrees: noncentral t in R.
    [Theory]
    [InlineData("known", double.PositiveInfinity)]
    [InlineData("9", 9)]
    [InlineData("19", 19)]
    public void ClearRate_TrueChange_AgreesWithR(string name, double df)
    {
        foreach (var change in new[] { 0, 0.5, 1, 1.5, 2, 2.771808, 3, 4, 5 })
        {
            Oracle.Close(
                Oracle.Value($"clear_rate_{name}", FormattableString.Invariant($"change{change}")),
                BeyondErrorRule.Standard.ClearRate(change, 0, df), 1e-8);
        }
    }

    // 2 Φ(−(SWC/TE)/√2): the change alone beyond the smallest worthwhile one.
    [Fact]
    public void PointBeyondWorthwhile_TabledRatios_AgreeWithR()
    {
        foreach (var ratio in new[] { 0.1, 0.2, 0.3, 0.5, 0.75, 1, 1.5, 2, 2.5, 3 })
            Oracle.Close(Oracle.Value("worthwhile_only", FormattableString.Invariant($"swc{ratio}")), FlagRates.PointBeyondWorthwhile(ratio));
    }

    [Theory]
    [InlineData(0.5, 0.84)]
    [InlineData(0.9, 0.65)]
    [InlineData(0.99, 0.16)]
    public void PointBeyondWorthwhile_ByReliability_IsMostlyWrong(double icc, double rounded)
    {
        var rate = FlagRates.PointBeyondWorthwhile(0.2 / Math.Sqrt(1 - icc));
        Oracle.Close(Oracle.Value("worthwhile_only_icc", FormattableString.Invariant($"icc{icc}")), rate);
        Assert.Equal(rounded, rate, 2);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(25)]
    [InlineData(50)]
    public void AtLeastOne_SquadSizes_AgreeWithR(int athletes)
        => Oracle.Close(Oracle.Value("at_least_one", $"m{athletes}"), FlagRates.AtLeastOne(athletes, 0.05));

    // R: qbinom(c(.025, .975), m, .05).
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(25)]
    [InlineData(54)]
    public void ByChance_SquadSizes_AgreeWithR(int athletes)
    {
        var count = FlagRates.ByChance(athletes, 0.05);
        Assert.Equal(Oracle.Value("chance_range", $"m{athletes}_low"), count.Low);
        Assert.Equal(Oracle.Value("chance_range", $"m{athletes}_high"), count.High);
        Assert.Equal(athletes * 0.05, count.Expected, 12);
    }

    [Fact]
    public void ByChance_NoAthletes_IsNothing() => Assert.Equal((0.0, 0, 0), (FlagRates.ByChance(0, 0.05).Expected, FlagRates.ByChance(0, 0.05).Low, FlagRates.ByChance(0, 0.05).High));

    [Fact]
    public void ByChance_RateAboveOne_Throws()
        => Assert.Contains("rate is 2; allowed: 0 to 1", Assert.Throws<ArgumentOutOfRangeException>(() => FlagRates.ByChance(3, 2)).Message, StringComparison.Ordinal);

    private static double Degrees(string name) => Oracle.Number(name[(name.LastIndexOf('_') + 1)..]);
}
