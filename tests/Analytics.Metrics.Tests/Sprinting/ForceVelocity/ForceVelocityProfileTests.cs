using Analytics.Metrics.Sprinting.Curve;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Sprinting.ForceVelocity;
using Analytics.Metrics.Tests.Sprinting.Fits;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sprinting.ForceVelocity;

public class ForceVelocityProfileTests
{
    // tests/oracles/sprint/force_velocity.csv: 50-digit arithmetic on the stated grid, 12 digits given.
    // Standard errors of the profile are checked with the other predictions in SprintCurveTests.
    [Fact]
    public void Of_OracleProfiles_Agree()
        => Assert.All(OracleTable.Read("sprint/force_velocity.csv"), row =>
        {
            var profile = ForceVelocityProfile.Of(
                new MonoExponential(Speed.FromMetresPerSecond(row["vmax_mps"]), Duration.FromSeconds(row["tau_s"])),
                Mass.FromKilograms(row["mass_kg"]), Length.FromMetres(row["height_m"]),
                new(row["pressure_mmHg"], row["temp_C"], Speed.FromMetresPerSecond(row["wind_mps"])),
                new(Duration.FromSeconds(0.01), Duration.FromSeconds(row["t_end_s"])));
            Agrees(row["F0_N"], profile.F0.Value);
            Agrees(row["slope_Sfv"], profile.Slope.Value);
            Agrees(row["V0_mps"], profile.V0.Value);
            Agrees(row["Pmax_W"], profile.PeakPower.Value);
            Agrees(row["F0_N_per_kg"], profile.F0PerMass.Value);
            Agrees(row["Pmax_W_per_kg"], profile.PeakPowerPerMass.Value);
            Agrees(row["RFmax_at_0.3s"], profile.RatioAtStart.Value);
            Agrees(row["DRF"], profile.RatioSlope.Value);
            Agrees(row["F_at_t0_N"], profile.Forces.At(Duration.Zero).Horizontal.Newtons);
            // The exact maximum lies within half a step (0.005 s) of a sample; power falls off there by about 1 per s², so by at most 3e-5.
            Assert.InRange(profile.Forces.PeakPower().Power.Watts / row["max_power_on_grid_W"], 1, 1 + 3e-5);
            Assert.Equal(row["t_of_max_power_s"], profile.Forces.PeakPower().Time.Seconds, 0.01);
            Assert.Null(profile.F0.StandardError);
            Assert.Contains("no error known", profile.F0.Method, StringComparison.Ordinal);
        });

    // [samozino2016] prints group means F0 638 N, V0 10.5 m/s, Pmax 1680 W: a product of means, so 1 %.
    [Fact]
    public void PeakPower_PublishedMeans_IsForceTimesSpeedOverFour()
    {
        // Without drag F0 = m V/T and V0 = V: V 10.5 m/s, m 75 kg, T = 75·10.5/638.
        var run = new MonoExponential(Speed.FromMetresPerSecond(10.5), Duration.FromSeconds(75 * 10.5 / 638));
        var profile = ForceVelocityProfile.Of(run, Mass.FromKilograms(75), Length.FromMetres(1.8), AirConditions.NoDrag);
        Assert.Equal(638, profile.F0.Value, 1e-6);
        Assert.Equal(10.5, profile.V0.Value, 1e-9);
        Assert.Equal(1680, profile.PeakPower.Value, 16.8);
    }

    [Fact]
    public void Of_Fit_StatesGridAirAndError()
    {
        var curve = SplitFitter.Fit(Gates.FiveGates).Curve!;
        var profile = ForceVelocityProfile.Of(curve, Mass.FromKilograms(90), Length.FromMetres(1.85));
        Assert.Equal(5.50, profile.Grid.End.Seconds, 1e-9); // five time constants of 1.1002 s, to the hundredth
        Assert.Contains("0 to 5.5 s in steps of 0.01 s, 760 mmHg, 20 °C, tailwind 0 m/s", profile.F0.Method, StringComparison.Ordinal);
        Assert.Contains("error of this run alone, 3 df", profile.F0.Method, StringComparison.Ordinal);
        Assert.True(profile.V0.Value > curve.TopSpeed.Value);
        Assert.NotNull(profile.RatioSlope.Interval);
    }

    [Fact]
    public void Grid_TooShort_NamesTheNumber()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new ForceGrid(Duration.FromSeconds(0.01), Duration.FromSeconds(0.2)));
        Assert.Equal("end", error.ParamName);
        Assert.Contains("got 0.2 s", error.Message, StringComparison.Ordinal);
        Assert.Equal("step", Assert.Throws<ArgumentOutOfRangeException>(() => new ForceGrid(Duration.Zero, Duration.FromSeconds(5))).ParamName);
    }

    private static void Agrees(double expected, double actual) => Assert.Equal(0, (actual / expected) - 1, 2e-11);
}
