using Analytics.Metrics.Jumping;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Jumping;

public class JumpHeightTests
{
    // Equations of Linthorne 2001, rows in tests/oracles/jumping.
    [Fact]
    public void FromFlightTime_OracleRows_AgreeForBothGravities()
    {
        foreach (var row in OracleTable.Read("jumping/height_from_flight.csv"))
        {
            var t = Duration.FromSeconds(row["flight_s"]);
            Close.ToSixDigits(row["height_m_g981"], JumpHeight.FromFlightTime(t).Metres, $"t {t}");
            Close.ToSixDigits(row["height_m_g980665"], JumpHeight.FromFlightTime(t, Gravity.Standard).Metres, $"t {t}");
        }
    }

    [Fact]
    public void FromTakeOffSpeed_OracleRows_Agree()
    {
        foreach (var row in OracleTable.Read("jumping/height_from_speed.csv"))
        {
            var height = JumpHeight.FromTakeOffSpeed(Speed.FromMetresPerSecond(row["take_off_m_s"]));
            Close.ToSixDigits(row["height_m"], height.Metres);
            Close.ToSixDigits(row["flight_s"], JumpHeight.ToFlightTime(height).Seconds);
        }
    }

    [Fact]
    public void Inverses_OracleRows_Agree()
    {
        foreach (var row in OracleTable.Read("jumping/speed_from_height.csv"))
        {
            var height = Length.FromMetres(row["height_m"]);
            Close.ToSixDigits(row["take_off_m_s"], JumpHeight.ToTakeOffSpeed(height).MetresPerSecond);
            Close.ToSixDigits(row["flight_s"], JumpHeight.ToFlightTime(height).Seconds);
        }
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.42)]
    [InlineData(1.2)]
    public void Inverses_AppliedTwice_ReturnTheHeight(double metres)
    {
        var height = Length.FromMetres(metres);
        // Two roundings of a square and a root.
        Assert.Equal(metres, JumpHeight.FromFlightTime(JumpHeight.ToFlightTime(height)).Metres, 1e-14);
        Assert.Equal(metres, JumpHeight.FromTakeOffSpeed(JumpHeight.ToTakeOffSpeed(height)).Metres, 1e-14);
    }

    [Fact]
    public void FromFlightTime_StandardGravity_IsLowerBy34PerHundredThousand()
    {
        var t = Duration.FromSeconds(0.55);
        var ratio = JumpHeight.FromFlightTime(t, Gravity.Standard) / JumpHeight.FromFlightTime(t);
        Assert.Equal(-0.000341, ratio - 1, 1e-6); // 9.80665 / 9.81 - 1, by hand
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.3)]
    public void FromFlightTime_NotAboveZero_SaysSo(double seconds)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => JumpHeight.FromFlightTime(Duration.FromSeconds(seconds)));
        Assert.Equal("flightTime", error.ParamName);
        Assert.Contains($"Flight time must be above 0 s; got {seconds.ToString(System.Globalization.CultureInfo.InvariantCulture)} s", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FromTakeOffSpeed_Negative_SaysSo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => JumpHeight.FromTakeOffSpeed(Speed.FromMetresPerSecond(-2.5)));
        Assert.Equal("takeOffSpeed", error.ParamName);
        Assert.Contains("0 m/s or more; got -2.5 m/s", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void FromFlightTime_ZeroGravity_SaysSo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => JumpHeight.FromFlightTime(Duration.FromSeconds(0.5), Acceleration.Zero));
        Assert.Equal("g", error.ParamName);
        Assert.Contains("Gravity must be above 0 m/s²; got 0 m/s²", error.Message, StringComparison.Ordinal);
    }
}
