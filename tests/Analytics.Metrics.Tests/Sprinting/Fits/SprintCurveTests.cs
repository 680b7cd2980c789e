using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Sprinting.ForceVelocity;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Metrics.Tests.Sprinting.Fits;

public class SprintCurveTests
{
    private static readonly Mass Heavy = Mass.FromKilograms(108.8621688);

    // tests/oracles/sprint/predictions.csv: 40-digit fit, every derivative numerical, delta method.
    [Fact]
    public void Predictions_OracleRows_Agree()
        => Assert.All(OracleTable.Read("sprint/predictions.csv"), row =>
        {
            var estimate = Quantity(Curve(row.Text("case"), row.Text("model")), row.Text("quantity"));
            Assert.Equal(0, (estimate.Value / row["value"]) - 1, 1e-7);
            Assert.Equal(0, (estimate.StandardError!.Value / row["standard_error"]) - 1, 1e-5);
        });

    [Fact]
    public void NewTimeAt_IntervalIsWiderThanOfTheExpectation()
    {
        var curve = Curve("metres5", "Still");
        var (expected, reading) = (curve.TimeAt(Length.FromMetres(15)).Interval!.Value, curve.NewTimeAt(Length.FromMetres(15)).Interval!.Value);
        // t(0.975) with 3 df is 3.182446 (any table); standard errors from predictions.csv.
        Assert.Equal(2.775985706654 - (3.182446305 * 0.002068259937), expected.Low, 1e-8);
        Assert.Equal(2.775985706654 + (3.182446305 * 0.004023574892), reading.High, 1e-8);
    }

    [Fact]
    public void NewTimeAt_DistanceResponse_TurnsMetresIntoSeconds()
    {
        var curve = SplitFitter.Fit(Gates.FiveGates, StartModel.Still, SplitResponse.Distance).Curve!;
        var expectation = curve.TimeAt(Length.FromMetres(40)).StandardError!.Value;
        var reading = curve.NewTimeAt(Length.FromMetres(40)).StandardError!.Value;
        // Residual SD sqrt(0.001964485921/3) = 0.0255896 m; speed at 40 m of V 8.5, T 1.1 is 8.4564 m/s (monoexp_inverse.csv).
        Assert.Equal(0.0255896 / 8.4564, Math.Sqrt((reading * reading) - (expectation * expectation)), 1e-5);
    }

    [Fact]
    public void SpeedAt_StartLine_IsZeroForAStillStart()
    {
        var speed = Curve("metres5", "Still").SpeedAt(Length.Zero);
        Assert.Equal(0, speed.Value);
        Assert.Equal(0, speed.StandardError);
    }

    [Fact]
    public void MomentumAt_ScalesWithMass()
    {
        var curve = Curve("yards3", "Still");
        var (one, two) = (curve.MomentumAt(Length.FromYards(10), Heavy), curve.MomentumAt(Length.FromYards(10), 2 * Heavy));
        Assert.Equal(2 * one.Value, two.Value, 1e-9);
        Assert.Equal(2 * one.StandardError!.Value, two.StandardError!.Value, 1e-9);
    }

    [Fact]
    public void Estimates_SayHowTheyWereMade()
    {
        var estimate = Curve("yards3", "Still").TopSpeed;
        Assert.Equal("top speed; mono-exponential fit of times, still start, 3 gates; error of this run alone, 1 df", estimate.Method);
        Assert.Equal(3, estimate.N);
        Assert.Contains("not a reaction time", Curve("runin6", "Offset").Offset!.Method, StringComparison.Ordinal);
    }

    [Fact]
    public void Predictions_OutsideTheirRange_NameTheNumber()
    {
        var curve = Curve("metres5", "Still");
        Assert.Contains("got 0 m", Assert.Throws<ArgumentOutOfRangeException>(() => curve.TimeAt(Length.Zero)).Message, StringComparison.Ordinal);
        Assert.Equal("bodyMass", Assert.Throws<ArgumentOutOfRangeException>(() => curve.MomentumAt(Length.FromMetres(5), Mass.Zero)).ParamName);
    }

    private static SprintCurve Curve(string name, string model)
    {
        IReadOnlyList<Split> splits = name switch
        {
            "yards3" => Gates.ThreeGates,
            "metres5" => Gates.FiveGates,
            "runin6" => Gates.RunInHalfMetre,
            _ => throw new ArgumentOutOfRangeException(nameof(name), name, "No such case."),
        };
        return SplitFitter.Fit(splits, Enum.Parse<StartModel>(model)).Curve!;
    }

    private static Estimate Quantity(SprintCurve curve, string quantity)
    {
        var (v, tau) = (curve.TopSpeed.Value, curve.TimeConstant.Value);
        return quantity switch
        {
            "top_speed" => curve.TopSpeed,
            "time_constant" => curve.TimeConstant,
            "initial_acceleration" => curve.InitialAcceleration,
            "time_15m" => curve.TimeAt(Length.FromMetres(15)),
            "time_60m" => curve.TimeAt(Length.FromMetres(60)),
            "new_time_15m" => curve.NewTimeAt(Length.FromMetres(15)),
            "speed_10yd" => curve.SpeedAt(Length.FromYards(10)),
            "speed_0m" => curve.SpeedAt(Length.Zero),
            "momentum_10yd_108.8621688kg" => curve.MomentumAt(Length.FromYards(10), Heavy),
            "power_per_mass" => curve.Carry(v * v / (4 * tau), v / (2 * tau), -v * v / (4 * tau * tau), "power"),
            "third" => curve.Offset ?? curve.RunIn!,
            _ => Force(curve, quantity.Split('_')[0]),
        };
    }

    private static Estimate Force(SprintCurve curve, string quantity)
    {
        var profile = ForceVelocityProfile.Of(curve, Mass.FromKilograms(90), Length.FromMetres(1.85), AirConditions.Standard,
            new(Duration.FromSeconds(0.01), Duration.FromSeconds(5.5)));
        return quantity switch
        {
            "f0" => profile.F0,
            "slope" => profile.Slope,
            "v0" => profile.V0,
            "pmax" => profile.PeakPower,
            "rf" => profile.RatioAtStart,
            "drf" => profile.RatioSlope,
            _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "No such quantity."),
        };
    }
}
