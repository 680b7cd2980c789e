using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Side = Analytics.Metrics.Trials.Side;

namespace Analytics.Metrics.Tests.ChangeOfDirection;

public class TurnMetricsTests
{
    private static readonly AthleteDay Day = Days.With(Turn(Side.Left, 2.40), Turn(Side.Left, 2.42), Turn(Side.Right, 2.46), Turn(Side.Right, 2.48), Turn(Side.Right, 2.47), Sprint(1.79), Sprint(1.81));

    [Fact]
    public void Deficit_of_the_means() => Assert.Equal(2.44 - 1.80, Assert.Single(MetricCatalogue.Get("cod_deficit").FromTrials(Day)).Value, 1e-12);

    // Scatter within sides: squares 0.0002 + 0.0002 over 1 + 2 df, so s = 0.011547; sides of 2 and 3 runs have s/√2 and s/√3;
    // error of (slow − fast)/fast is √((e_slow/fast)² + (slow·e_fast/fast²)²).
    [Fact]
    public void Asymmetry_with_the_error_of_its_runs()
    {
        var value = Assert.Single(MetricCatalogue.Get("cod_asymmetry").FromTrials(Day));
        var s = Math.Sqrt(0.0004 / 3);
        Assert.Equal(100 * 0.06 / 2.41, value.Value, 1e-9);
        Assert.Equal(100 * double.Hypot(s / Math.Sqrt(3) / 2.41, 2.47 * (s / Math.Sqrt(2)) / (2.41 * 2.41)), value.StandardError!.Value, 1e-9);
        Assert.Equal(3, value.ErrorDegreesOfFreedom);
        Assert.Contains("right slower", value.Doubt, StringComparison.Ordinal);
    }

    [Fact]
    public void Asymmetry_of_the_deficits() => Assert.Equal(100 * (0.67 - 0.61) / 0.61, Assert.Single(MetricCatalogue.Get("cod_deficit_asymmetry").FromTrials(Day)).Value, 1e-9);

    [Fact]
    public void One_run_a_side_has_no_error() => Assert.Null(Assert.Single(MetricCatalogue.Get("cod_asymmetry").FromTrials(Days.With(Turn(Side.Left, 2.41), Turn(Side.Right, 2.47)))).StandardError);

    [Fact]
    public void Hand_and_electronic_times_are_not_mixed()
        => Assert.Empty(MetricCatalogue.Get("cod_deficit").FromTrials(Days.With(Turn(Side.Left, 2.41), Turn(Side.Right, 2.47), Sprint(1.8) with { Timing = TimingMethod.Hand })));

    private static AgilityTrial Turn(Side side, double seconds) => new()
    {
        AthleteId = "a1", Date = Days.Date, Test = "505", Timing = TimingMethod.Electronic, Side = side, Time = Duration.FromSeconds(seconds),
    };

    private static SprintTrial Sprint(double seconds) => new()
    {
        AthleteId = "a1", Date = Days.Date, Timing = TimingMethod.Electronic, Start = StartType.StandingBeam, Splits = [new(Length.FromMetres(10), Duration.FromSeconds(seconds))],
    };
}
