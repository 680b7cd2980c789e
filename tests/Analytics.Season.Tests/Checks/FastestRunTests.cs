using Analytics.Metrics.Trials;
using Analytics.Season.Checks;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Checks;

public sealed class FastestRunTests
{
    private const double MetresPerYard = 0.9144;

    // From rest t = √(2x/12); with u unseen seconds √(2x/12 + u²) − u; never less than x at 12.5 m/s. Figures by pocket calculator.
    [Theory]
    [InlineData(StartType.FirstMovement, TimingMethod.Electronic, 10, 1.2345)]
    [InlineData(StartType.Signal, TimingMethod.Electronic, 5, 0.8729)]
    [InlineData(StartType.ThreePointHand, TimingMethod.Electronic, 5, 0.6580)]
    [InlineData(StartType.ThreePointHand, TimingMethod.Video, 10, 1.0096)]
    [InlineData(StartType.StandingBeam, TimingMethod.Electronic, 10, 0.8908)]
    [InlineData(StartType.ThreePointHand, TimingMethod.Hand, 10, 0.7956)]
    [InlineData(StartType.StandingBeam, TimingMethod.Hand, 10, 0.7315)]
    [InlineData(StartType.FirstMovement, TimingMethod.Electronic, 40, 2.9261)]
    [InlineData(StartType.StandingBeam, TimingMethod.Hand, 40, 2.9261)]
    public void ShortestTime_ByClock_AllowsForRunningBeforeItStarts(StartType start, TimingMethod timing, double yards, double seconds)
        => Assert.Equal(seconds, FastestRun.ShortestTime(yards * MetresPerYard, timing, start), 4);

    [Fact]
    public void ShortestTime_WhateverTheClock_IsTheLeastOfAll()
    {
        for (var metres = 1.0; metres < 60; metres += 0.5)
            foreach (var timing in Enum.GetValues<TimingMethod>())
                foreach (var start in Enum.GetValues<StartType>())
                    Assert.True(FastestRun.ShortestTime(metres) <= FastestRun.ShortestTime(metres, timing, start));
    }

    // Quick but real: a hand-lift clock, and a late thumb on a stopwatch.
    [Theory]
    [InlineData("electronic", "0.85", "1.45")]
    [InlineData("hand", "", "1.10")]
    public void Read_QuickRunOffALateClock_IsKept(string timing, string fiveYards, string tenYards)
    {
        using var season = new TemporarySeason().With(
            "testing/2026-03-02/sprints.csv", $"athlete_id,timing,start,t_5yd_s,t_10yd_s\nP001,{timing},three_point_hand,{fiveYards},{tenYards}\n");
        Assert.Empty(season.Read().HeldBack);
    }
}
