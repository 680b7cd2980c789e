using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;
using static Analytics.Metrics.Tests.Profile.Invented;

namespace Analytics.Metrics.Tests.Profile;

/// <summary>Only repeats made the same way tell the error of a test. The ten athletes and 0.6029556829 are those of MetricReliabilityTests (R 4.2.2).</summary>
public class RetestRowsTests
{
    private static readonly double[] s_first = [38.2, 41.5, 35.1, 44.8, 39.6, 33.4, 47.2, 40.3, 36.9, 42.7];
    private static readonly double[] s_second = [39.0, 41.1, 36.4, 45.9, 38.8, 34.6, 48.1, 41.7, 36.2, 43.5];

    // Three more athletes, measured then estimated 6 too high: with them the error would be far larger.
    [Fact]
    public void Of_MeasuredThenEstimated_IsLeftOutAndTold()
    {
        var found = Of([.. Numbers(s_first), .. Numbers([40, 41, 42], 10)], [.. Numbers(s_second), .. Estimates([46, 47, 48], 10)]);
        Assert.Equal(0.6029556829, found.Error!.Value, 9);
        Assert.Equal(9, found.DegreesOfFreedom);
        Assert.Equal("10 athletes of this squad tested on retest days, measured on each", found.Basis);
        Assert.Equal("Retest days: 3 athletes are left out, not measured on both days as the others were: the equation's error would pass for error of the test.", found.Cautions[0]);
        Assert.False(found.HoldsFreshEquationError);
    }

    [Fact]
    public void Of_EverybodyEstimated_HoldsTheFreshErrorAndDoesNotAddItAgain()
    {
        var found = Of(Estimates(s_first), Estimates(s_second));
        Assert.Equal(0.6029556829, found.Error!.Value, 9);
        Assert.True(found.HoldsFreshEquationError);
        Assert.Empty(found.Cautions);

        // Same repetitions: the lasting error cancels and the fresh one is in the retest, so the reach is that of measured values.
        var profile = new SquadProfile { Squad = Squad(10), Retests = [RepeatDays.Pair(Estimates(s_first), Estimates(s_second))] };
        var change = Assert.Single(profile.Change(Metric(), [Day("a1", March, Estimated(40, 2, 1, 1))], [Day("a1", April, Estimated(42, 2, 1, 1))]).Athletes);
        Assert.Equal(0.6029556829 * Math.Sqrt(2), change.Change!.StandardError, 9);
    }

    // Leaving out the pairs whose repetitions differ most would make the error look small: with one load, that is how a better day shows.
    [Fact]
    public void Of_EstimatedFromOtherRepetitions_StaysIn()
        => Assert.Equal(0.6029556829, Of(Estimates(s_first), Estimates(s_second, repetitions: 9)).Error!.Value, 9);

    // Enough of the measured alone are preferred; too few of either go together.
    [Fact]
    public void Of_BothWays_PrefersMeasuredElsePools()
    {
        IReadOnlyList<AthleteDay> first = [.. Numbers(s_first[..5]), .. Estimates(s_first[5..], 5)];
        IReadOnlyList<AthleteDay> second = [.. Numbers(s_second[..5]), .. Estimates(s_second[5..], 5)];
        var pooled = MetricReliability.Of(Metric(), "", [RepeatDays.Pair(first, second)], []);
        Assert.Equal(0.6029556829, pooled.Error!.Value, 9);
        Assert.Equal("10 athletes of this squad tested on retest days", pooled.Basis);
        Assert.False(pooled.HoldsFreshEquationError);
        var alone = MetricReliability.Of(Metric(), "", [RepeatDays.Pair(first, second)], [], minimumRetested: 5);
        Assert.Equal(4, alone.DegreesOfFreedom);
        Assert.Contains("5 athletes are left out", alone.Cautions[0], StringComparison.Ordinal);
    }

    // Three days, measured on the first and the last: those two are compared.
    [Fact]
    public void Of_ThreeDays_KeepsTheMeasuredTwo()
    {
        var found = MetricReliability.Of(Metric(), "", [new([Numbers(s_first), Estimates(s_first), Numbers(s_second)])], []);
        Assert.Equal(0.6029556829, found.Error!.Value, 9);
        Assert.Empty(found.Cautions);
    }

    [Fact]
    public void Of_NobodyMadeTheSameWay_FallsToPublishedAndTells()
    {
        var found = MetricReliability.Of(Metric(published: new(4, null, "key")), "", [RepeatDays.Pair(Numbers(s_first), Estimates(s_second))], []);
        Assert.Equal(ErrorSource.PublishedStudy, found.Source);
        Assert.Contains("10 athletes are left out, measured on one day and estimated on the other", found.Cautions[0], StringComparison.Ordinal);
        Assert.Contains("0 athletes did this test twice", found.Cautions[1], StringComparison.Ordinal);
    }

    private static MetricReliability Of(IReadOnlyList<AthleteDay> first, IReadOnlyList<AthleteDay> second)
        => MetricReliability.Of(Metric(), "", [RepeatDays.Pair(first, second)], []);

    private static List<AthleteDay> Numbers(double[] values, int from = 0) => [.. values.Select((v, i) => Day($"a{from + i + 1}", March, Number(v)))];

    private static List<AthleteDay> Estimates(double[] values, int from = 0, double repetitions = 5)
        => [.. values.Select((v, i) => Day($"a{from + i + 1}", March, Estimated(v, 2, 1, 1, repetitions)))];
}
