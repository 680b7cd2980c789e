using Analytics.Metrics.Strength;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

public class OneRepMaxFormulasTests
{
    [Theory]
    [InlineData(1, "Brzycki")]
    [InlineData(10, "Brzycki")]
    [InlineData(10.5, "Epley")]
    [InlineData(40, "Epley")]
    public void DefaultFor_Repetitions_IsBrzyckiUpToTenThenEpley(double repetitions, string name)
        => Assert.Equal(name, OneRepMaxFormulas.DefaultFor(repetitions).Name);

    [Fact]
    public void DefaultFor_AcrossTheChange_MakesNoStep()
        => Assert.Equal(
            OneRepMaxFormulas.DefaultFor(10).Estimate(Mass.FromKilograms(100), 10).Kilograms,
            OneRepMaxFormulas.DefaultFor(10.001).Estimate(Mass.FromKilograms(100), 10).Kilograms, 1e-12);

    [Fact]
    public void All_EveryFormula_IsFilledInAndItsSourceIsListed()
    {
        var references = File.ReadAllText(Repository.Path("docs", "references.md"));
        Assert.Equal(11, OneRepMaxFormulas.All.Count);
        Assert.All(OneRepMaxFormulas.All, f =>
        {
            Assert.Contains($"- **{f.SourceKey}** ", references, StringComparison.Ordinal);
            Assert.NotEmpty(f.Expression);
            Assert.NotEmpty(f.Population);
            Assert.NotEmpty(f.Evidence);
            Assert.True(f.ValidRange.Lowest >= 1 && f.ValidRange.Highest < f.BreaksDownAt);
        });
    }

    // Division II players, n = 51 (printed): 12.3 repetitions with 225 lb, 310.0 lb measured, Epley's mean 316.3 lb. Epley is linear,
    // so its mean is its value at the mean repetitions; these are rounded to 0.1, which is 0.4 lb, and players with few
    // repetitions round differently: soft, 1.5 lb.
    [Fact]
    public void Epley_MeanOfAPublishedSample_IsNearThePrintedMean()
        => Assert.Equal(316.3, GeneralFormulas.Epley.Estimate(Mass.FromPounds(225), 12.3).Pounds, 1.5);

    // The same sample: Brzycki's mean 345.8 lb, because it curves upwards. At 12.3 ± 5.5 repetitions, five equally likely
    // values of a normal distribution (quantiles 0.1, 0.3, 0.5, 0.7, 0.9): soft, 10 lb.
    [Fact]
    public void Brzycki_MeanOfAPublishedSample_RunsAwayAsPrinted()
    {
        double[] repetitions = [5.25, 9.42, 12.3, 15.18, 19.35];

        Assert.Equal(345.8, repetitions.Average(r => GeneralFormulas.Brzycki.Estimate(Mass.FromPounds(225), r).Pounds), 10.0);
    }
}
