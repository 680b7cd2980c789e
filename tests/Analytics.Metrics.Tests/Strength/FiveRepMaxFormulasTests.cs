using Analytics.Metrics.Strength;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

public class FiveRepMaxFormulasTests
{
    // Reynolds, Gordon and Robergs 2006: both equations are printed in the abstract; values worked out independently to six digits.
    [Fact]
    public void Estimate_FiveRepMax_AgreesWithTheTable()
    {
        var rows = OracleTable.Read("strength/reynolds_5rm.csv");
        Assert.Equal(6, rows.Count);
        Assert.All(rows, row =>
        {
            var formula = row.Text("lift") == Lifts.BenchPress ? FiveRepMaxFormulas.BenchPress : FiveRepMaxFormulas.LegPress;
            Assert.Equal(row.Text("lift"), formula.OnlyLift);
            Close.ToSixDigits(row["one_rep_max_kg"], formula.Estimate(Mass.FromKilograms(row["five_rep_max_kg"]), 5).Kilograms, row.Text("lift"));
        });
    }

    // The intercept is in kilograms: 220.46226218 lb is 100 kg, so the result is 113.77 kg (1.1307 x 100 + 0.6999 = 113.7699).
    [Fact]
    public void Estimate_LoadInPounds_UsesTheInterceptInKilograms()
        => Assert.Equal(113.7699, FiveRepMaxFormulas.BenchPress.Estimate(Mass.FromPounds(220.46226218), 5).Kilograms, 1e-6);
}
