using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.WholeSeason;

namespace Analytics.Notebooks.Tests.WholeSeason;

/// <summary>What the season report says where little is known: no retest, values that repeat, gains that went opposite ways.</summary>
public sealed class SeasonWordsTests
{
    private const string NoRetest = "[]";

    private static WrittenSeason TwoDays(string retests) => new WrittenSeason().Squad(retests: retests).Day("2026-01-12").Day("2026-03-02", 25, wobble: 2);

    [Fact]
    public void SquadChange_WithoutARetest_ClaimsNothingAboutRetestDays()
    {
        using var season = TwoDays(NoRetest);
        var text = SeasonReport.Open(season.Folder).SquadChange().ToText();
        Assert.DoesNotContain("Between the retest days", text, StringComparison.Ordinal);
        Assert.Contains("No retest days are set, so how far a day alone moves a mean is not known.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void SquadChange_WithARetest_SaysWhetherAMeanMoved()
    {
        using var season = ReportSeasons.ThreeDays();
        Assert.Contains("Between the retest days, when no true change is expected, ", SeasonReport.Open(season.Folder).SquadChange().ToText(), StringComparison.Ordinal);
    }

    // The squat's published error is of a study whose number of players is not known: it has no interval.
    [Fact]
    public void Tests_PublishedErrorOfUnknownDoubt_HasNoIntervalWithoutWidth()
    {
        using var season = TwoDays(NoRetest);
        var text = SeasonReport.Open(season.Folder).Tests().ToText();
        Assert.Contains("published error [grgic2", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\((\d+\.\d+) to \1\) published", text);
    }

    [Fact]
    public void Answers_ValuesThatRepeat_AreNotSaidToBeTooFew()
    {
        using var season = Alike();
        var report = SeasonReport.Open(season.Folder);
        var text = report.Answers().ToText();
        Assert.Contains("No trend could be fitted: too few players, or values that do not vary.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("No measure was done on two occasions", text, StringComparison.Ordinal);
        Assert.Contains("Not drawn: squat and jump height, since no trend could be fitted.", report.SquadChange().ToText(), StringComparison.Ordinal);
        Assert.Contains("All values are the same, so there is no trend to fit.", report.Cautions().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Field_GainsThatWentOppositeWays_AreNotCalledNoEvidence()
    {
        using var season = Opposite();
        var report = SeasonReport.Open(season.Folder);
        Assert.Contains("Gains in squat went with smaller gains or losses in 10-metre time", report.Answers().ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain("no evidence either way.", report.Answers().ToText(), StringComparison.Ordinal);
        Assert.Contains("hold for all pairs together at 95", report.Transfer().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Transfer_TwoDays_DoesNotClaimThatGoodDaysAreTakenOff()
    {
        using var season = TwoDays(NoRetest);
        var text = SeasonReport.Open(season.Folder).Transfer().ToText();
        Assert.Contains("what one good day gives to both tests is not where testing days are too few", text, StringComparison.Ordinal);
        using var longer = Opposite();
        Assert.Contains("taken off, and what one good day gives to both tests.", SeasonReport.Open(longer.Folder).Transfer().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Trends_VerdictsOfGroups_StandBesideWhatChanceGives()
    {
        using var season = ReportSeasons.ThreeDays(25);
        // Two groups in squat, jump height, 10 m and top speed, at 5 % each.
        Assert.Matches(@"Each group is judged by itself: \d of 8 changes of groups are called clear\. Had nothing changed, chance alone would give at most 0\.4 on average, seldom more than 2\.",
            SeasonReport.Open(season.Folder).Trends().ToText());
    }

    private static WrittenSeason Alike()
    {
        var season = new WrittenSeason().Squad(retests: NoRetest);
        foreach (var date in (string[])["2026-01-12", "2026-03-02", "2026-05-04"])
        {
            season.Write($"testing/{date}/lifts.csv", "athlete_id;lift;set;load_kg;reps\n" + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};back_squat;1;150;1"))
                .Write($"testing/{date}/jumps.csv", "athlete_id;jump;method;attempt;height_cm\n" + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};countermovement;mat;1;40"));
        }

        return season;
    }

    // Who gains more in the squat loses more over 10 m; errors are small and differ by day and test.
    private static WrittenSeason Opposite()
    {
        var season = new WrittenSeason().Squad(retests: NoRetest);
        string[] dates = ["2026-01-12", "2026-02-16", "2026-03-23", "2026-05-04"];
        for (var d = 0; d < dates.Length; d++)
        {
            var share = d / 3.0;
            double Sway(int i, int test) => ((i * 7 + d * 5 + test * 3 + i * d * (test + 2)) % 11 - 5) / 5.0;
            season.Write($"testing/{dates[d]}/lifts.csv", "athlete_id;lift;set;load_kg;reps\n" + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};back_squat;1;{150 + i % 5 + share * 6 * i + Sway(i, 0):0.0};1").Replace('.', ','))
                .Write($"testing/{dates[d]}/sprints.csv", "athlete_id;attempt;timing;start;t_10m_s\n" + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};1;electronic;standing_beam;{1.80 + i % 4 * 0.01 + share * 0.02 * (i - 6) + 0.005 * Sway(i, 1):0.000}").Replace('.', ','));
        }

        return season;
    }
}
