using Analytics.Metrics.Jumping;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Jumping;

public class PushOffTests
{
    // Equations of Samozino and others 2008, rows in tests/oracles/jumping.
    [Fact]
    public void From_OracleRows_Agree()
    {
        foreach (var row in OracleTable.Read("jumping/push_off.csv"))
        {
            var push = PushOff.From(Mass.FromKilograms(row["mass_kg"]), Length.FromMetres(row["height_m"]), Length.FromMetres(row["push_off_m"]));
            Close.ToSixDigits(row["force_n"], push.MeanForce.Newtons);
            Close.ToSixDigits(row["speed_m_s"], push.MeanSpeed.MetresPerSecond);
            Close.ToSixDigits(row["power_w"], push.MeanPower.Watts);
            Close.ToSixDigits(row["power_w_kg"], push.MeanPowerPerMass.WattsPerKilogram);
        }
    }

    // The work of the mean force is the energy at the top: 80 · 9.81 · (0.35 + 0.40) = 588.6 J, by hand.
    [Fact]
    public void From_WorkOverTheDistance_IsTheEnergyAtTheTop()
    {
        var distance = Length.FromMetres(0.40);
        var push = PushOff.From(Mass.FromKilograms(80), Length.FromMetres(0.35), distance);
        Assert.Equal(588.6, (push.MeanForce * distance).Joules, 1e-9);
    }

    [Fact]
    public void From_DoubleMass_DoublesForceButNotForcePerMass()
    {
        var one = PushOff.From(Mass.FromKilograms(60), Length.FromMetres(0.3), Length.FromMetres(0.4));
        var two = PushOff.From(Mass.FromKilograms(120), Length.FromMetres(0.3), Length.FromMetres(0.4));
        Assert.Equal(2, two.MeanForce / one.MeanForce, 1e-12);
        Assert.Equal(one.MeanForcePerMass.NewtonsPerKilogram, two.MeanForcePerMass.NewtonsPerKilogram, 1e-12);
    }

    [Fact]
    public void From_NoPushOffDistance_SaysSo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => PushOff.From(Mass.FromKilograms(80), Length.FromMetres(0.3), Length.Zero));
        Assert.Equal("pushOffDistance", error.ParamName);
        Assert.Contains("Push-off distance must be above 0 m; got 0 m", error.Message, StringComparison.Ordinal);
    }
}
