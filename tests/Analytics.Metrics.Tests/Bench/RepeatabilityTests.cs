using Analytics.Metrics.Bench;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Tests.Seasons;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Bench;

/// <summary>The best repeats there are: retest days, then attempts of one day, then occasions weeks apart, then none. Figures of R are compared to the digits taken from it.</summary>
public class RepeatabilityTests
{
    private static readonly double[] s_first = [50, 52, 55, 47, 60, 58, 44, 49], s_second = [51.2, 51.1, 56.3, 46.5, 59.2, 59.9, 45.1, 48.6];

    // R 4.2.2, aov of value on athlete and day: ICC(3,1) 0.97982, its F interval 0.90311 to 0.99593.
    [Fact]
    public void Of_RetestDays_IsTheConsistencyOfR()
    {
        var repeats = Of([Day(Course.Baseline, s_first), Day(Course.Retest, s_second)], retest: true);

        Assert.Equal((RepeatKind.RetestDays, 8, 8), (repeats.Kind, repeats.Athletes, repeats.LeaveOneOut.Count));
        Assert.Equal(0.979820117675, repeats.Value!.Value, 1e-11);
        Assert.Equal(0.903108847, repeats.Interval!.Value.Low, 1e-8);
        Assert.Equal(0.995927042, repeats.Interval.Value.High, 1e-8);
        Assert.All(repeats.LeaveOneOut, icc => Assert.Equal(7, icc.Athletes));
    }

    // The mean of two attempts: ICC(1,k) 0.99001 (R 4.2.2, one-way aov), an upper bound for the day's value.
    [Fact]
    public void Of_AttemptsOfOneDay_IsTheOneWayIccOfTheirMean()
    {
        var repeats = Of([[.. s_first.Select((v, i) => Invented.Day($"a{i + 1}", v, s_second[i]))]], retest: false);

        Assert.Equal((RepeatKind.SameDay, 8), (repeats.Kind, repeats.Athletes));
        Assert.Equal(0.990010866292, repeats.Value!.Value, 1e-11);
    }

    // Most have two attempts: of three the first two count, and one attempt alone is no repeat.
    [Fact]
    public void Of_UnlikeNumbersOfAttempts_TakesAsManyAsMostHave()
    {
        AthleteDay[] day = [.. s_first.Select((v, i) => i == 0 ? Invented.Day("a1", v, s_second[0], 99) : Invented.Day($"a{i + 1}", v, s_second[i])), Invented.Day("a9", 50)];

        var repeats = Of([day], retest: false);
        Assert.Equal(8, repeats.Athletes);
        Assert.Equal(0.990010866292, repeats.Value!.Value, 1e-11);
    }

    [Fact]
    public void Of_OccasionsWeeksApart_IsTheirConsistency()
    {
        var repeats = Of([Day(Course.Baseline, s_first), Day(Course.June, s_second)], retest: false);

        Assert.Equal(RepeatKind.Occasions, repeats.Kind);
        Assert.Equal(0.979820117675, repeats.Value!.Value, 1e-11);
    }

    // Of three occasions the two that most athletes share.
    [Fact]
    public void Of_ThreeOccasions_TakesThePairMostShare()
    {
        var repeats = Of([Day(Course.Baseline, s_first), Day(Course.March, [.. s_first.Select((v, i) => i < 7 ? 99 - v : double.NaN)]), Day(Course.June, s_second)], retest: false);

        Assert.Equal((RepeatKind.Occasions, 8), (repeats.Kind, repeats.Athletes));
        Assert.Equal(0.979820117675, repeats.Value!.Value, 1e-11);
    }

    [Fact]
    public void Of_FewOnTheRetest_FallsBackInOrder()
    {
        IReadOnlyList<AthleteDay> fewer = [.. Day(Course.Retest, s_second).Take(7)];
        IReadOnlyList<AthleteDay> twice = [.. s_first.Select((v, i) => Invented.Day($"a{i + 1}", Course.Baseline, Invented.Number(v), Invented.Number(v + 1)))];

        Assert.Equal(RepeatKind.SameDay, Of([twice, fewer, Day(Course.June, s_second)], retest: true).Kind);
        Assert.Equal(RepeatKind.Occasions, Of([Day(Course.Baseline, s_first), fewer, Day(Course.June, s_second)], retest: true).Kind);
        var none = Of([Day(Course.Baseline, s_first), fewer], retest: true);
        Assert.Equal((RepeatKind.None, null, 0), (none.Kind, none.Value, none.Athletes));
    }

    // The retest with most complete rows speaks.
    [Fact]
    public void Of_TwoRetests_TakesTheFuller()
    {
        IReadOnlyList<IReadOnlyList<AthleteDay>> days =
            [Day(Course.Baseline, s_first), [.. Day(Course.Retest, s_second).Take(8)], Day(Course.June, [.. s_first, 51]), Day(Course.June.AddDays(2), [.. s_second, 50])];
        var values = SeasonValues.Of(Invented.Metric(), days);
        var profile = new SquadProfile { Squad = Invented.Squad(9), Retests = [RepeatDays.Pair(days[0], days[1]), RepeatDays.Pair(days[2], days[3])] };

        Assert.Equal(9, Repeatability.Of(profile, values, BenchRule.Standard).Athletes);
    }

    // Exact repeats leave no error: the ICC is 1 without doubt, which the typical error calls copied values.
    [Fact]
    public void Of_ExactRepeats_IsOne()
    {
        var repeats = Of([Day(Course.Baseline, s_first), Day(Course.Retest, s_first)], retest: true);

        Assert.Equal((RepeatKind.RetestDays, 1.0), (repeats.Kind, repeats.Value));
        Assert.Equal((1.0, 1.0), (repeats.Interval!.Value.Low, repeats.Interval.Value.High));
    }

    [Fact]
    public void Of_EqualValues_HaveNoRepeats()
        => Assert.Equal(RepeatKind.None, Of([Day(Course.Baseline, [.. s_first.Select(_ => 5.0)]), Day(Course.Retest, [.. s_first.Select(_ => 5.0)])], retest: true).Kind);

    private static IReadOnlyList<AthleteDay> Day(DateOnly date, double[] values) => Invented.Days(date, values);

    private static Repeatability Of(IReadOnlyList<IReadOnlyList<AthleteDay>> days, bool retest) => Repeatability.Of(
        new SquadProfile { Squad = Invented.Squad(9), Retests = retest ? [RepeatDays.Pair(days[0], days[1])] : [] }, SeasonValues.Of(Invented.Metric(rule: TrialRule.Mean), days), BenchRule.Standard);
}
