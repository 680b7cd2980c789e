using static Analytics.Simulation.Tests.CommittedStudy;

namespace Analytics.Simulation.Tests.SeasonStudy;

/// <summary>The study as it is kept: over 200 seasons what the season report promises holds.</summary>
public class CommittedSeasonStudyTests
{
    private static readonly CommittedStudy s_study = new("season-study.md");

    [Fact]
    public void Document_IsOfTwoHundredSeasons()
        => Assert.Contains("season-study --seasons 200 --seed 3000 --out docs/season-study.md", s_study.Text, StringComparison.Ordinal);

    [Fact]
    public void Trends_SquadAndGroups_CoverNearTheStatedLevel()
    {
        var rows = s_study.Rows("## Trends of the squad and its groups");
        Assert.Equal(15, rows.Count);
        // Wanted 93 to 97 %; a single metric of 200 squads has a Monte Carlo error of 1.5 points, two of which are allowed below.
        Assert.All(rows, r => Assert.InRange(Number(r[1]), 90, 100));
        Assert.All(rows, r => Assert.InRange(Number(r[2]), 93, 97));
        Assert.InRange(Number(rows[^1][1]), 93, 97);
    }

    [Fact]
    public void Changes_TwiceDetectableAreFoundAndFalseFlagsAreAtMostTheStatedRate()
    {
        var rows = s_study.Rows("## Changes of single athletes").Where(r => r[0] == "all").ToList();
        Assert.Equal(2, rows.Count);
        // "at most 5 %" with the Monte Carlo error of 0.1 points, twice.
        Assert.All(rows, r => Assert.InRange(Number(r[3]), 0, 5.2));
        Assert.All(rows, r => Assert.InRange(Number(r[5]), 80, 100));
        Assert.All(rows, r => Assert.InRange(Number(r[1]), 93, 97));
    }
}
