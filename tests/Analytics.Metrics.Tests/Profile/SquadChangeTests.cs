using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Statistics.Change;
using static Analytics.Metrics.Tests.Profile.Invented;

namespace Analytics.Metrics.Tests.Profile;

public class SquadChangeTests
{
    private static readonly PublishedError s_one = new(null, 1, "key");

    // Known error 1: the interval reaches 2.771808 to either side; smallest worthwhile change 1 set by the coach.
    [Fact]
    public void Of_KnownError_JudgesEverybody()
    {
        var change = Profile(4, 1).Change(Metric(published: s_one), Days(March, 50, 50, 50, 50), Days(April, 53, 47, 52, 50.5));
        Assert.Equal(
            [("a1", Verdict.ClearGain), ("a3", Verdict.CannotTellYet), ("a4", Verdict.CannotTellYet), ("a2", Verdict.ClearLoss)],
            change.Athletes.Select(a => (a.AthleteId, a.Verdict)));
        Assert.Equal((1, 1), (change.Gains, change.Losses));
        Assert.Equal(0.228192, change.Athletes[0].Interval!.Value.Low, 6);
        Assert.Equal(5.771808, change.Athletes[0].Interval!.Value.High, 6);
        Assert.Equal((0.2, 0, 1, 0.95), (Math.Round(change.ByChance.Expected, 9), change.ByChance.Low, change.ByChance.High, change.ByChance.Level));
        Assert.Equal(0.625, change.Mean!.Mean.Value, 12);
        Assert.Equal(("set by the coach", March, April), (change.Worthwhile.Basis, change.From, change.To));
    }

    [Fact]
    public void Of_LowerIsBetter_PutsTheFastestGainFirst()
    {
        var change = Profile(3, 1).Change(Metric(better: Direction.Lower, published: s_one), Days(March, 50, 50, 50), Days(April, 55, 45, 50));
        Assert.Equal([("a2", Verdict.ClearGain), ("a3", Verdict.CannotTellYet), ("a1", Verdict.ClearLoss)], change.Athletes.Select(a => (a.AthleteId, a.Verdict)));
    }

    // Proportional error of 4 %: at the middle of 98 and 102 it is 4, so the interval reaches 11.087231 (R: 4 qnorm(.975) sqrt(2)).
    [Fact]
    public void Of_ProportionalError_IsTakenAtTheMiddleOfBothValues()
    {
        var athlete = Assert.Single(Profile(1, 1).Change(Metric(published: new(4, null, "key")), Days(March, 98), Days(April, 102)).Athletes);
        Assert.Equal(4 + 11.087231, athlete.Interval!.Value.High, 6);
    }

    [Fact]
    public void Of_WorthwhileFromSpread_TakesErrorOffWithinGroups()
    {
        // Two groups far apart, each with observed SD 2: variance 4 − 1 of error, 0.2 √3 = 0.3464.
        double[] values = [48, 148, 50, 150, 52, 152, 48, 148, 50, 150, 52, 152];
        var profile = new SquadProfile { Squad = Squad(12, "Line", "Backs") };
        var change = profile.Change(Metric(published: s_one), Days(March, values), Days(April, values));
        // Each group: 48, 50, 52 twice; squares 16 on 5 degrees: observed variance 3.2, true 2.2.
        Assert.Equal(0.2 * Math.Sqrt(2.2), change.Worthwhile.Value!.Value, 12);
        Assert.Contains("0.2 of the SD between athletes of the same group (12 in 2 groups, 2 March 2026), test error taken off", change.Worthwhile.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_MixedSeriesAndMissingDays_AccountsForEverybody()
    {
        var change = Profile(6, 1).Change(
            Metric(published: s_one),
            [Day("a1", March, Number(5, "electronic")), Day("a2", March, Number(5, "hand")), Day("a3", March, Number(5, "electronic")), Day("a4", March, Number(5, "electronic"))],
            [Day("a1", April, Number(6, "electronic")), Day("a2", April, Number(6, "hand")), Day("a3", April, Number(6, "hand")), Day("a5", April, Number(6, "electronic"))]);
        Assert.Equal("electronic", change.Series);
        Assert.Equal(["a1"], change.Athletes.Select(a => a.AthleteId));
        Assert.Equal(["a3", "a4", "a5"], change.OneDayOnly);
        Assert.Equal(["a2", "a2", "a3"], change.NotCompared.Select(n => n.AthleteId));
    }

    // Electronic is the commoner scale today, yet only hand times were taken on both days.
    [Fact]
    public void Of_ScaleSharedByBothDays_IsPreferred()
    {
        var change = Profile(4, 1).Change(
            Metric(published: s_one),
            [Day("a1", March, Number(5, "hand"))],
            [Day("a1", April, Number(6, "hand")), Day("a2", April, Number(6, "electronic")), Day("a3", April, Number(6, "electronic"))]);
        Assert.Equal("hand", change.Series);
        Assert.Single(change.Athletes);
    }

    [Fact]
    public void Of_OneAthlete_HasAChangeButNoMeanInterval()
    {
        var change = Profile(1, 1).Change(Metric(published: s_one), Days(March, 50), Days(April, 60));
        Assert.Equal(Verdict.ClearGain, Assert.Single(change.Athletes).Verdict);
        Assert.Null(change.Mean!.Mean.Interval);
        Assert.Equal(Verdict.CannotTellYet, change.MeanVerdict);
    }

    [Fact]
    public void Of_AllEqualValues_ClaimsNothing()
    {
        var change = new SquadProfile { Squad = Squad(8) }.Change(Metric(published: s_one), Days(March, 50, 50, 50, 50, 50, 50, 50, 50), Days(April, 50, 50, 50, 50, 50, 50, 50, 50));
        Assert.All(change.Athletes, a => Assert.Equal(Verdict.CannotTellYet, a.Verdict));
        Assert.Equal(Verdict.CannotTellYet, change.MeanVerdict);
        Assert.Null(change.Worthwhile.Value);
        Assert.Equal(-1, change.Worthwhile.TrueVariance!.Value, 12);
    }

    // Everybody up by exactly 5: no scatter, so no interval of the mean worth the name.
    [Fact]
    public void Of_EqualDifferences_GivesNoVerdictOnTheMean()
        => Assert.Equal(Verdict.CannotTellYet, Profile(3, 1).Change(Metric(published: s_one), Days(March, 40, 50, 60), Days(April, 45, 55, 65)).MeanVerdict);

    [Fact]
    public void Of_ClearMean_IsSeenThoughNoAthleteIs()
    {
        var change = Profile(6, 0.5).Change(Metric(published: s_one), Days(March, 50, 50, 50, 50, 50, 50), Days(April, 51.5, 52, 51, 52.2, 51.8, 51.3));
        Assert.Equal((0, Verdict.ClearGain), (change.Gains, change.MeanVerdict));
    }

    [Fact]
    public void Of_SameDayAttemptsOnly_WithholdsTheVerdictAndSaysWhy()
    {
        var change = Profile(2, 1).Change(Metric(), [Day("a1", 50, 50.2), Day("a2", 50, 50.1)], [Day("a1", 80, 80.2), Day("a2", 50, 50.1)]);
        Assert.All(change.Athletes, a => Assert.Equal(Verdict.CannotTellYet, a.Verdict));
        Assert.Contains("only same-day attempts", change.Athletes[0].Reason, StringComparison.Ordinal);
        Assert.NotNull(change.Athletes[0].Interval);
        Assert.Equal(0, change.ByChance.Expected);
    }

    [Fact]
    public void Of_NoErrorKnown_ShowsTheDifferenceWithoutInterval()
    {
        var athlete = Assert.Single(Profile(1, 1).Change(Metric(), Days(March, 50), Days(April, 60)).Athletes);
        Assert.Equal((10, Verdict.CannotTellYet), (athlete.Difference, athlete.Verdict));
        Assert.Null(athlete.Interval);
        Assert.Contains("no error known", athlete.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_PercentageErrorAroundZero_DoesNotDivideByNothing()
        => Assert.Contains("values that average 0", Assert.Single(Profile(1, 1).Change(Metric(published: new(4, null, "key")), Days(March, -5), Days(April, 5)).Athletes).Reason, StringComparison.Ordinal);

    [Fact]
    public void Of_NobodyOnBothDays_IsEmptyNotAnError()
    {
        var change = Profile(2, 1).Change(Metric(published: s_one), Days(March, 50), Days(April, double.NaN, 60));
        Assert.Empty(change.Athletes);
        Assert.Null(change.Mean);
        Assert.Equal(["a1", "a2"], change.OneDayOnly);
        var nothing = Profile(1, 1).Change(Metric(published: s_one), [], []);
        Assert.Null(nothing.Series);
        Assert.Null(nothing.From);
    }

    [Fact]
    public void Cautions_Always_NameRegressionToTheMean()
        => Assert.Contains("low first score tend to score higher next time", Profile(1, 1).Change(Metric(published: s_one), Days(March, 50), Days(April, 60)).Cautions[^1], StringComparison.Ordinal);

    private static SquadProfile Profile(int athletes, double worthwhile)
        => new() { Squad = Squad(athletes), Worthwhile = new Dictionary<string, double> { ["m"] = worthwhile } };
}
