using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Tests.Sprinting.Fits;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Sprinting;

public class SprintReadingTests
{
    [Fact]
    public void Of_BeamStart_FitsTheRunIn()
    {
        var reading = SprintReading.Of(Runs.Of(StartType.StandingBeam, Gates.RunInHalfMetre));
        Assert.Equal(StartModel.RunIn, reading.Fit.Start);
        Assert.Equal(8.500097044, reading.Fit.Curve!.TopSpeed.Value, 1e-7); // SplitFitterTests, 50-digit oracle
        Assert.Null(reading.Doubt);
        Assert.Equal("electronic, standing start through a beam", reading.Series);
    }

    [Fact]
    public void Of_BeamStartWithoutRunIn_FallsBackAndSaysSo()
    {
        // Times of V 8.5, T 1.1 from a still start, 0.05 s late at every gate: the opposite of a run-in.
        var splits = Gates.Metres((5, 1.422), (10, 2.166), (20, 3.453), (30, 4.663), (40, 5.850));
        var reading = SprintReading.Of(Runs.Of(StartType.StandingBeam, splits));
        Assert.Equal(StartModel.Still, reading.Fit.Start);
        Assert.NotNull(reading.Fit.Curve);
        Assert.Contains("no unseen run-in was found", reading.Doubt, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_HandTimes_SaySo()
        => Assert.Contains("hand times", SprintReading.Of(Runs.Of(StartType.ThreePointHand, Gates.ThreeGates, TimingMethod.Hand)).Doubt, StringComparison.Ordinal);

    [Fact]
    public void OfSquad_PoolsWithinASeriesOnly()
    {
        var readings = SprintReading.OfSquad(
        [
            Runs.Of(StartType.ThreePointHand, Gates.ThreeGates),
            Runs.Of(StartType.ThreePointHand, Gates.ThreeGates, TimingMethod.Hand),
            Runs.Of(StartType.ThreePointHand, Gates.Yards((10, 1.70), (20, 2.80), (40, 4.90))),
            Runs.Of(StartType.ThreePointHand, Gates.Yards((10, 1.70), (40, 4.90))),
        ]);
        Assert.Equal([2, 1, 2], readings.Take(3).Select(r => r.Fit.Curve!.DegreesOfFreedom));
        Assert.Equal("2 gates: the still start model needs 3", readings[3].Fit.Explanation);
        Assert.Equal(2, readings[0].Fit.Curve!.Pool!.Fits);
    }
}
