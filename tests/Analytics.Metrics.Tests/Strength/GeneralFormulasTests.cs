using Analytics.Metrics.Strength;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

/// <summary>The general equations against tables worked out independently (tests/oracles/strength).</summary>
public class GeneralFormulasTests
{
    // The tables carry six significant digits: half a unit in the sixth is at most 5e-6 of the value.
    private const double SixDigits = 5.001e-6;

    public static TheoryData<string> Names => new(OneRepMaxFormulas.General.Select(f => f.Name));

    [Theory, MemberData(nameof(Names))]
    public void Estimate_HundredKilograms_AgreesWithTheTable(string name)
        => AssertRows("strength/one_rep_max_100.csv", name, 8, row
            => (row["one_rep_max"], Formula(name).Estimate(Mass.FromKilograms(100), row["repetitions"]).Kilograms));

    [Theory, MemberData(nameof(Names))]
    public void Estimate_225Pounds_AgreesWithTheTableInPounds(string name)
        => AssertRows("strength/one_rep_max_225_lb.csv", name, 5, row
            => (row["one_rep_max_lb"], Formula(name).Estimate(Mass.FromPounds(225), row["repetitions"]).Pounds));

    [Theory, MemberData(nameof(Names))]
    public void Estimate_AsPercentOfOneRepMax_AgreesWithTheTable(string name)
        => AssertRows("strength/percent_of_one_rep_max.csv", name, 15, row
            => (row["percent"], 100 * (Mass.FromKilograms(80) / Formula(name).Estimate(Mass.FromKilograms(80), row["repetitions"]))));

    // Largest difference of the rounded spellings up to 15 repetitions, from the same tables: 0.034 % and 0.052 %.
    [Theory]
    [InlineData("Epley", "Epley (0.0333)", 3.5e-4)]
    [InlineData("Brzycki", "Brzycki (1.0278)", 5.3e-4)]
    public void Estimate_RoundedSpelling_DiffersByLessThanItsRounding(string name, string spelling, double atMost)
        => AssertRows("strength/one_rep_max_100.csv", spelling, 8, row
            => (row["one_rep_max"], Formula(name).Estimate(Mass.FromKilograms(100), row["repetitions"]).Kilograms), atMost);

    // 36/(37 - r) and 1 + r/30 are both 4/3 at r = 10.
    [Fact]
    public void Epley_AtTenRepetitions_IsExactlyBrzycki()
    {
        Assert.Equal(133.33333333333333, At(GeneralFormulas.Epley, 10), 1e-12);
        Assert.Equal(133.33333333333333, At(GeneralFormulas.Brzycki, 10), 1e-12);
    }

    [Fact]
    public void Epley_BelowTenRepetitions_IsAboveBrzycki()
        => Assert.All([1.5, 2, 5, 9, 9.9], r => Assert.True(At(GeneralFormulas.Epley, r) > At(GeneralFormulas.Brzycki, r)));

    [Fact]
    public void Epley_AboveTenRepetitions_IsBelowBrzycki()
        => Assert.All([10.1, 11, 15, 30], r => Assert.True(At(GeneralFormulas.Epley, r) < At(GeneralFormulas.Brzycki, r)));

    [Fact]
    public void Estimate_AtOneRepetition_OnlyBrzyckiAndLombardiGiveTheLoadBack()
        => Assert.Equal(["Brzycki", "Lombardi"], OneRepMaxFormulas.General.Where(f => Math.Abs(At(f, 1) - 100) < 1e-9).Select(f => f.Name));

    // A copy of Mayhew or Wathen without the minus in the exponent falls with repetitions.
    [Theory, MemberData(nameof(Names))]
    public void Estimate_MoreRepetitions_GiveMore(string name)
    {
        var values = Enumerable.Range(1, 36).Select(r => At(Formula(name), r)).ToList();

        Assert.Equal(values.Order().Distinct(), values);
        Assert.True(values[0] >= 100 - 1e-12);
    }

    // The wrong "Landers", w/(1.0644 - 0.0644 r), gives 238 for 100 at 10 repetitions; every published equation stays below 135.
    [Theory, MemberData(nameof(Names))]
    public void Estimate_TenRepetitions_IsNoneOfTheRunawayCopies(string name) => Assert.InRange(At(Formula(name), 10), 120, 135);

    // Some copies print Wathen's coefficients under the name Mayhew. At 5 repetitions: Mayhew 119.011, Wathen 116.583.
    [Fact]
    public void Mayhew_AtFiveRepetitions_IsNotWathen()
    {
        Assert.Equal(119.011, At(GeneralFormulas.Mayhew, 5), 5e-4);
        Assert.Equal(116.583, At(GeneralFormulas.Wathen, 5), 5e-4);
    }

    // One equation under two names (Wathan and Wathen, Lander and its alias, Welday and Epley) would count twice in the spread.
    [Fact]
    public void General_NoEquation_IsListedTwice()
    {
        Assert.Equal(8, OneRepMaxFormulas.General.Select(f => Math.Round(At(f, 7), 6)).Distinct().Count());
        Assert.Equal(8, OneRepMaxFormulas.General.Select(f => f.Name).Distinct().Count());
    }

    [Theory, MemberData(nameof(Names))]
    public void Estimate_AnotherUnit_GivesTheSameMass(string name)
        => Assert.Equal(
            Formula(name).Estimate(Mass.FromPounds(225), 6).Kilograms,
            Formula(name).Estimate(Mass.FromKilograms(102.05828325), 6).Kilograms, 1e-10);

    private static double At(OneRepMaxFormula formula, double repetitions) => formula.Estimate(Mass.FromKilograms(100), repetitions).Kilograms;

    private static OneRepMaxFormula Formula(string name) => OneRepMaxFormulas.General.Single(f => f.Name == name);

    private static void AssertRows(string path, string name, int count, Func<OracleRow, (double Expected, double Actual)> pair, double tolerance = SixDigits)
    {
        var rows = OracleTable.Read(path).Where(r => r.Text("formula") == name).ToList();
        Assert.Equal(count, rows.Count);
        Assert.All(rows, row => Assert.Equal(1, pair(row).Actual / pair(row).Expected, tolerance));
    }
}
