using Analytics.Metrics.FieldPower;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.FieldPower;

public class BarPowerTests
{
    // Work and energy of the bar, in the manner of Garhammer 1993; rows in tests/oracles/jumping.
    [Fact]
    public void Mean_OracleRows_Agree()
    {
        foreach (var row in OracleTable.Read("jumping/bar.csv"))
        {
            var power = BarPower.Mean(Mass.FromKilograms(row["bar_kg"]), Length.FromMetres(row["rise_m"]), Duration.FromSeconds(row["time_s"]),
                Speed.FromMetresPerSecond(row["end_speed_m_s"]));
            Close.ToSixDigits(row["power_w"], power.Watts);
        }
    }

    [Fact]
    public void Mean_NoEndSpeed_IsTheSameAsABarAtRest()
    {
        var (bar, rise, time) = (Mass.FromKilograms(100), Length.FromMetres(0.9), Duration.FromSeconds(0.8));
        Assert.Equal(BarPower.Mean(bar, rise, time, Speed.Zero), BarPower.Mean(bar, rise, time));
    }

    [Fact]
    public void Mean_NegativeEndSpeed_SaysSo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => BarPower.Mean(
            Mass.FromKilograms(100), Length.FromMetres(0.9), Duration.FromSeconds(0.8), Speed.FromMetresPerSecond(-1.2)));
        Assert.Equal("endSpeed", error.ParamName);
        Assert.Contains("Bar speed must be 0 m/s or more; got -1.2 m/s", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Mean_NoTime_SaysSo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => BarPower.Mean(Mass.FromKilograms(100), Length.FromMetres(0.9), Duration.Zero));
        Assert.Equal("time", error.ParamName);
        Assert.Contains("Pull time must be above 0 s; got 0 s", error.Message, StringComparison.Ordinal);
    }
}
