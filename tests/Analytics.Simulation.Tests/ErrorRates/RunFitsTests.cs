using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.Tests.ErrorRates;

public class RunFitsTests
{
    // x = V (t − T (1 − e^(−t/T))) with V = 8.5 m/s and T = 1.1 s, solved by bisection in Python: without a run-in, and after one of 0.3 m.
    private static readonly double[] Still = [1.3007, 1.9967, 3.1911, 5.3949];
    private static readonly double[] Moving = [1.0602, 1.7477, 2.9374, 5.1395];

    private static SprintTrial Run(double[] seconds) => new()
    {
        AthleteId = "a",
        Date = new(2026, 1, 1),
        Timing = TimingMethod.Electronic,
        Start = StartType.ThreePointHand,
        Splits = [.. new[] { 5.0, 10, 20, 40 }.Select((yards, i) => new Split(Length.FromYards(yards), Duration.FromSeconds(seconds[i])))],
    };

    [Fact]
    public void Of_UnseenRunIn_FindsTheCurve()
    {
        var fit = RunFits.Of(Run(Moving), StartModel.RunIn);
        Assert.Equal(StartModel.RunIn, fit.Start);
        Assert.Equal(8.5, fit.Curve!.TopSpeed.Value, 2);
        Assert.Equal(1.1, fit.Curve.TimeConstant.Value, 2);
    }

    // Clock 0.06 s early: no run-in can say so.
    [Fact]
    public void Of_NoRunInToBeSeen_FallsBackToTheStillStart()
    {
        var fit = RunFits.Of(Run([.. Still.Select(t => t + 0.06)]), StartModel.RunIn);
        Assert.Equal(StartModel.Still, fit.Start);
        Assert.NotNull(fit.Curve);
    }
}
