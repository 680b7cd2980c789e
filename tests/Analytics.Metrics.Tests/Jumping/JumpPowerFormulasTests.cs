using Analytics.Metrics.Jumping;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Jumping;

public class JumpPowerFormulasTests
{
    private static readonly Mass GroupMass = Mass.FromKilograms(65.9);

    // Fox and Mathews's Lewis formula for 60 cm and 75 kg, printed as 1261.6 W; Sayers's squat formula for 55 cm and 80 kg, printed as 4907.5 W.
    [Fact]
    public void Estimate_PrintedExamples_Agree()
    {
        Assert.Equal(1261.6, Watts(JumpPowerFormulas.Lewis, 60, 75), 0.1); // printed to 0.1 W from rounded factors
        Assert.Equal(4907.5, Watts(JumpPowerFormulas.SayersSquat, 55, 80), 0.05);
    }

    // Canavan and Vescovi 2004 print group means for 20 women of 65.9 kg: Harman 2585.0, Sayers squat jump 2920.8,
    // Sayers countermovement 2925.1, measured 2425.4 W (their own formula 0.77 %, 18.7 W, under). Sayers's squat formula gives back
    // the mean height, 32.79 cm, since a linear formula of the mean is the mean of the formula.
    // 10 W: the mean mass is printed to 0.1 kg (up to 2.5 W) and the paper's coefficients may carry more digits.
    // Harman with plus 1822 would give 6224 W.
    [Fact]
    public void HarmanPeak_CanavanVescoviGroupMeans_NeedMinus1822()
    {
        const double height = 32.79;
        Assert.Equal(2920.8, Watts(JumpPowerFormulas.SayersSquat, height, 65.9), 0.5);
        Assert.Equal(2585.0, Watts(JumpPowerFormulas.HarmanPeak, height, 65.9), 10.0);
        Assert.Equal(2925.1, Watts(JumpPowerFormulas.SayersCountermovement, height, 65.9), 10.0);
        Assert.Equal(2425.4, Watts(JumpPowerFormulas.CanavanVescovi, height, 65.9), 28.7);
    }

    [Fact]
    public void All_OracleRows_Agree()
    {
        var formulas = JumpPowerFormulas.All.Concat(JumpPowerFormulas.Variants).ToDictionary(f => f.Name);
        var rows = OracleTable.Read("jumping/power.csv");
        foreach (var row in rows)
            Close.ToSixDigits(row["power_w"], Watts(formulas[row.Text("formula")], row["height_cm"], row["mass_kg"], row["stature_cm"]), row.Text("formula"));
        Assert.Equal([.. formulas.Keys.Order(StringComparer.Ordinal)], rows.Select(r => r.Text("formula")).Distinct().Order(StringComparer.Ordinal));
    }

    // As printed in the papers' abstracts (Johnson–Bahamonde from memory).
    [Theory]
    [InlineData("Harman peak", "61.9·h + 36.0·m − 1822")]
    [InlineData("Canavan–Vescovi", "65.1·h + 25.8·m − 1413.1")]
    [InlineData("Johnson–Bahamonde mean", "41.4·h + 31.2·m − 13.9·s + 431")]
    public void Expression_LinearFormula_ReadsAsPrinted(string name, string expression)
        => Assert.Equal(expression, JumpPowerFormulas.All.Single(f => f.Name == name).Expression);

    [Fact]
    public void LewisKilogramMetresPerSecond_OracleRows_Agree()
    {
        foreach (var row in OracleTable.Read("jumping/lewis_kg_m_s.csv"))
            Close.ToSixDigits(row["power_kg_m_s"], JumpPowerFormulas.LewisKilogramMetresPerSecond(row["height_cm"], row["mass_kg"]));
    }

    // A copy of Lewis with the mass inside the root is in circulation; power must be proportional to mass.
    [Fact]
    public void Lewis_DoubleMass_DoublesThePower()
        => Assert.Equal(2, Watts(JumpPowerFormulas.Lewis, 60, 150) / Watts(JumpPowerFormulas.Lewis, 60, 75), 1e-12);

    // Standard errors printed by Canavan and Vescovi 2004 and by Amonette and others 2012; the others are from memory and so not carried as numbers.
    [Fact]
    public void StandardErrorWatts_OnlyWherePrinted()
    {
        var known = JumpPowerFormulas.All.Where(f => f.StandardErrorWatts is not null).ToDictionary(f => f.Name, f => f.StandardErrorWatts);
        Assert.Equal(2, known.Count);
        Assert.Equal(120.8, known["Canavan–Vescovi"]);
        Assert.Equal(250.7, known["Amonette"]);
    }

    [Fact]
    public void All_TextsAndSources_AreComplete()
    {
        var references = File.ReadAllText(Repository.Path("docs", "references.md"));
        foreach (var formula in JumpPowerFormulas.All)
        {
            Assert.All([formula.Name, formula.Expression, formula.Population, formula.Fit], text => Assert.False(string.IsNullOrWhiteSpace(text)));
            Assert.Contains($"**{formula.SourceKey}**", references, StringComparison.Ordinal);
        }
        Assert.Equal(JumpPowerFormulas.All.Count, JumpPowerFormulas.All.Select(f => f.Name).Distinct().Count());
    }

    [Fact]
    public void Default_IsAmonetteWithItsPrintedError()
    {
        var estimate = JumpPowerFormulas.Default.Estimate(Length.FromCentimetres(50), GroupMass);
        Assert.Equal("Amonette", estimate.Formula.Name);
        Assert.Equal(estimate.Power / GroupMass, estimate.PerBodyMass);
    }

    private static double Watts(JumpPowerFormula formula, double cm, double kg, double? statureCm = null)
        => formula.Estimate(Length.FromCentimetres(cm), Mass.FromKilograms(kg), statureCm is { } s ? Length.FromCentimetres(s) : null).Power.Watts;
}
