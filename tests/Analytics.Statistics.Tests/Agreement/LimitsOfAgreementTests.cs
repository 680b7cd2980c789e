using Analytics.Statistics.Agreement;
using Analytics.Statistics.Reliability;
using Analytics.Statistics.Tests.Reliability;

namespace Analytics.Statistics.Tests.Agreement;

/// <summary>Bland and Altman 1986, two meters of peak expiratory flow, as printed; figures marked M are from memory.</summary>
public class LimitsOfAgreementTests
{
    private static readonly double[] s_differences = [.. Oracle.Column("bland-altman-1986.csv", 1).Zip(Oracle.Column("bland-altman-1986.csv", 3), (a, b) => a - b)];

    [Fact]
    public void WithMultiplier_BlandAltman_MatchesPrint()
    {
        var limits = LimitsOfAgreement.WithMultiplier(s_differences, 2);
        Assert.Equal(-2.1, limits.Bias.Value, 1);
        Assert.Equal(38.8, limits.StandardDeviation, 1);
        Assert.Equal(9.4, limits.Bias.StandardError!.Value, 1);
        Assert.Equal(16.3, limits.RuleOfThumbError, 1);
        Assert.Equal(-22.0, limits.Bias.Interval!.Value.Low, 1);
        Assert.Equal(17.8, limits.Bias.Interval!.Value.High, 1);
        // Printed −79.7 and 75.5, worked from the rounded −2.1 and 38.8 (M).
        Assert.Equal(-79.7, limits.Lower.Value, 0.1);
        Assert.Equal(75.5, limits.Upper.Value, 0.1);
        Assert.Equal(-114.3, limits.RuleOfThumbLower.Low, 0.2);
        Assert.Equal(110.1, limits.RuleOfThumbUpper.High, 0.2);
    }

    // Printed: repeatability 43.2 and 56.4 l/min from rounded steps; corrected SD 37.7, SD of means 33.2 (M).
    [Fact]
    public void Replicates_BlandAltman_MatchesPrint()
    {
        TrialTable wright = ReliabilityTables.Of("pefr_wright"), mini = ReliabilityTables.Of("pefr_mini");
        var singles = ReplicateAgreement.Of(wright, mini);
        Assert.Equal(33.2, singles.SpreadOfMeans, 1);
        Assert.Equal(37.7, singles.CorrectedSpread, 1);
        Assert.Equal(43.2, Within(wright).RepeatabilityCoefficient().Value, 0.15);
        Assert.Equal(56.4, Within(mini).RepeatabilityCoefficient().Value, 0.15);
    }

    // 6,000 seeded samples of 12: the exact interval of the upper limit holds bias + 1.96 SD at 95 %; 3 standard errors are 0.84 %.
    [Fact]
    public void ExactUpper_SmallSamples_HoldsTheTruthAtTheStatedRate()
    {
        var normal = new Gaussian(77);
        const int samples = 6000;
        var held = 0;
        for (var i = 0; i < samples; i++)
            if (LimitsOfAgreement.Of([.. Enumerable.Range(0, 12).Select(_ => normal.Next())]).ExactUpper.Contains(1.959963984540054)) held++;
        Assert.InRange((double)held / samples, 0.95 - 0.0085, 0.95 + 0.0085);
    }

    [Fact]
    public void Of_ShiftAndSign_MirrorsTheLimits()
    {
        LimitsOfAgreement one = LimitsOfAgreement.Of(s_differences), other = LimitsOfAgreement.Of([.. s_differences.Select(d => 5 - d)]);
        Oracle.Close(5 - one.Lower.Value, other.Upper.Value, 1e-12);
        Oracle.Close(5 - one.ExactUpper.High, other.ExactLower.Low, 1e-10);
    }

    [Fact]
    public void Of_EqualDifferences_SaysSo()
        => Assert.Contains("All 3 differences are 2; limits need some spread", Assert.Throws<ArgumentException>(() => LimitsOfAgreement.Of([2, 2, 2])).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Of_NotFinite_NamesPlace(double bad)
        => Assert.Contains("differences[1] is", Assert.Throws<ArgumentException>(() => LimitsOfAgreement.Of([2, bad])).Message, StringComparison.Ordinal);

    // Single readings differ by 2 on average with SD √(0.5² + 1² + 1²) = 1.5; 3,000 seeded sets of 20 athletes, two replicates a method. The interval
    // is approximate: 1.5 % is allowed on top of three standard errors.
    [Fact]
    public void Replicates_Simulated_HoldTheTruthAtAboutTheStatedRate()
    {
        var normal = new Gaussian(15);
        const int sets = 3000;
        var held = 0;
        for (var i = 0; i < sets; i++)
        {
            List<IReadOnlyList<double?>> first = [], second = [];
            for (var a = 0; a < 20; a++)
            {
                double level = 50 + 5 * normal.Next(), own = 2 + 0.5 * normal.Next();
                first.Add([level + own + normal.Next(), level + own + normal.Next()]);
                second.Add([level + normal.Next(), level + normal.Next()]);
            }

            if (ReplicateAgreement.Of(TrialTable.FromRows(first), TrialTable.FromRows(second)).Upper.Interval!.Value.Contains(2 + 1.96 * 1.5)) held++;
        }

        Assert.InRange((double)held / sets, 0.923, 0.977);
    }

    [Fact]
    public void Replicates_MissingReading_IsCounted()
        => Assert.Equal(1, ReplicateAgreement.Of(TrialTable.FromPairs([1, 2, 4, 7], [1.5, 2, 3, null]), TrialTable.FromPairs([1, 2, 3, 5], [2, 2.5, 3, 5])).LeftOut);

    private static TypicalError Within(TrialTable table)
        => TypicalErrors.FromAttempts([.. Enumerable.Range(0, table.Athletes).Select(i => (IReadOnlyList<double>)[table[i, 0]!.Value, table[i, 1]!.Value])]);
}
