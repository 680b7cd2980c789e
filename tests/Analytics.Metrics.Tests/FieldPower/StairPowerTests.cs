using Analytics.Metrics.FieldPower;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.FieldPower;

public class StairPowerTests
{
    // Textbook example for 65 kg, 1.05 m, 0.52 s: 131.3 kg·m/s, 1287 W (McArdle and Katch; from memory, so 1 W and 0.1 kg·m/s).
    [Fact]
    public void Mean_TextbookExample_AgreesSoftly()
    {
        var power = StairPower.Mean(Mass.FromKilograms(65), Length.FromMetres(1.05), Duration.FromSeconds(0.52));
        Assert.Equal(1287, power.Watts, 1.0);
        Assert.Equal(131.3, power.Watts / 9.81, 0.1);
    }

    [Fact]
    public void Mean_OracleRows_Agree()
    {
        foreach (var row in OracleTable.Read("jumping/stair.csv"))
        {
            var g = Acceleration.FromMetresPerSecondSquared(row["g_m_s2"]);
            var power = StairPower.Mean(Mass.FromKilograms(row["mass_kg"]), Length.FromMetres(row["rise_m"]), Duration.FromSeconds(row["time_s"]), g);
            Close.ToSixDigits(row["power_w"], power.Watts);
            Close.ToSixDigits(row["power_kg_m_s"], power.Watts / row["g_m_s2"]);
        }
    }

    [Fact]
    public void Mean_NoRise_SaysSo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => StairPower.Mean(Mass.FromKilograms(65), Length.Zero, Duration.FromSeconds(0.5)));
        Assert.Equal("rise", error.ParamName);
        Assert.Contains("Rise must be above 0 m; got 0 m", error.Message, StringComparison.Ordinal);
    }
}
