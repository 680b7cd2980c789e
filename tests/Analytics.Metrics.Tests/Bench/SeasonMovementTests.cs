using Analytics.Metrics.Bench;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Tests.Seasons;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Bench;

public class SeasonMovementTests
{
    // Changes 1, 2, 3, ... 9: mean 5, SD √7.5, t(8) = 2.306 (table), so 5 ± 2.306 × 2.7386/3.
    [Fact]
    public void Of_TwoOccasions_IsTheMeanChange()
    {
        var movement = Of(retest: false, Invented.Days(Course.Baseline, [.. Enumerable.Range(1, 9).Select(i => 100.0 + 3 * i)]), Invented.Days(Course.June, [.. Enumerable.Range(1, 9).Select(i => 100.0 + 4 * i)]))!;

        Assert.Equal((Course.Baseline, Course.June, 9), (movement.From, movement.To, movement.Mean.Mean.N));
        Assert.Equal(5, movement.Mean.Mean.Value, 1e-12);
        Assert.Equal(2.895, movement.Mean.Mean.Interval!.Value.Low, 1e-3);
        Assert.Equal(7.105, movement.Mean.Mean.Interval.Value.High, 1e-3);
        Assert.Equal(1.826, movement.Paired!.Z, 1e-3);
        // Exact limits of 5/√7.5: noncentrality of t(8) = 5.477 by uniroot(pt) of R 4.2.2, over √9.
        Assert.Equal(0.7127801, movement.Paired.ZInterval.Low, 1e-6);
        Assert.Equal(2.901316, movement.Paired.ZInterval.High, 1e-6);
        Assert.True(movement.Moved);
        // No error between days is known, so no one's change is judged and nothing is said in typical errors.
        Assert.Equal((0, 0, null, null, null), (movement.Gains, movement.Losses, movement.TypicalError, movement.InTypicalErrors, movement.Still));
    }

    // Backs gain 8 kg, linemen nothing, of errors of about 0.9 kg: all 12 backs are seen, and one lineman of 12 is taken for a loss, where 1 in 20 is allowed.
    // R 4.2.2, ten digits: t.test of June less the mean of the retest days, sd of the retest difference over √2, and the interval of the one over the other.
    [Fact]
    public void Of_Season_CountsWhoChangedAndSaysHowStillTheRetestWas()
    {
        var values = SeasonValues.Of(Invented.Metric(), Course.Days);
        var quality = TestQuality.Of(Course.Profile, values);
        var movement = SeasonMovement.Of(new BenchSquad(Course.Profile, Course.Days, []), values, quality)!;

        Assert.Equal((12, 1), (movement.Gains, movement.Losses));
        Assert.Equal(24, movement.Mean.Mean.N);
        Assert.Equal(4.04375, movement.Mean.Mean.Value, 1e-9);
        Assert.Equal(0.8897514308, movement.TypicalError!.Value, 1e-9);
        Assert.Equal(2.542710588, movement.InTypicalErrors!.Value.Low, 1e-8);
        Assert.Equal(6.546906714, movement.InTypicalErrors.Value.High, 1e-8);
        Assert.Equal(-0.0375, movement.Still!.Mean.Value, 1e-9);
        Assert.True(movement.Moved);
    }

    [Fact]
    public void Of_OneOccasion_IsNothing()
    {
        Assert.Null(Of(false, Invented.Days(Course.Baseline, 1, 2, 3)));
        Assert.Null(Of(true, Invented.Days(Course.Baseline, 1, 2, 3), Invented.Days(Course.Retest, 1, 2, 4)));
        Assert.Null(Of(false));
    }

    [Fact]
    public void Of_OnePlayer_HasNoInterval()
    {
        var movement = Of(false, Invented.Days(Course.Baseline, 1), Invented.Days(Course.June, 3))!;

        Assert.Equal((2.0, null, null), (movement.Mean.Mean.Value, movement.Moved, movement.Paired));
    }

    [Fact]
    public void Of_EqualChanges_HaveNoStandardisedMean()
        => Assert.Null(Of(false, Invented.Days(Course.Baseline, 1, 2, 3), Invented.Days(Course.June, 2, 3, 4))!.Paired);

    private static SeasonMovement? Of(bool retest, params IReadOnlyList<AthleteDay>[] days)
    {
        var profile = new SquadProfile { Squad = Invented.Squad(9), Retests = retest ? [RepeatDays.Pair(days[0], days[1])] : [] };
        var values = SeasonValues.Of(Invented.Metric(), days);
        return SeasonMovement.Of(new BenchSquad(profile, days, []), values, TestQuality.Of(profile, values));
    }
}
