using System.Globalization;
using System.Runtime.CompilerServices;

namespace Analytics.Simulation.Tests.SeasonStudy;

/// <summary>The study as it is kept: over 200 seasons what the season report promises holds.</summary>
public class CommittedSeasonStudyTests
{
    private static readonly string s_document = File.ReadAllText(InRepository("docs/season-study.md"));

    [Fact]
    public void Document_IsOfTwoHundredSeasons()
        => Assert.Contains("season-study --seasons 200 --seed 3000 --out docs/season-study.md", s_document, StringComparison.Ordinal);

    [Fact]
    public void Trends_SquadAndGroups_CoverNearTheStatedLevel()
    {
        var rows = Rows("## Trends of the squad and its groups");
        Assert.Equal(15, rows.Count);
        // Wanted 93 to 97 %; a single metric of 200 squads has a Monte Carlo error of 1.5 points, two of which are allowed below.
        Assert.All(rows, r => Assert.InRange(Number(r[1]), 90, 100));
        Assert.All(rows, r => Assert.InRange(Number(r[2]), 93, 97));
        Assert.InRange(Number(rows[^1][1]), 93, 97);
    }

    [Fact]
    public void Changes_TwiceDetectableAreFoundAndFalseFlagsAreAtMostTheStatedRate()
    {
        var rows = Rows("## Changes of single athletes").Where(r => r[0] == "all").ToList();
        Assert.Equal(2, rows.Count);
        // "at most 5 %" with the Monte Carlo error of 0.1 points, twice.
        Assert.All(rows, r => Assert.InRange(Number(r[3]), 0, 5.2));
        Assert.All(rows, r => Assert.InRange(Number(r[5]), 80, 100));
        Assert.All(rows, r => Assert.InRange(Number(r[1]), 93, 97));
    }

    private static List<string[]> Rows(string head)
    {
        var from = s_document.IndexOf(head, StringComparison.Ordinal);
        Assert.True(from >= 0, head);
        var to = s_document.IndexOf("\n## ", from, StringComparison.Ordinal);
        return [.. s_document[from..(to < 0 ? s_document.Length : to)].Split('\n').Where(l => l.StartsWith("| ", StringComparison.Ordinal))
            .Select(l => l.Trim('|', ' ').Split(" | ")).Where(r => r[0] is not ("metric" or "---"))];
    }

    private static double Number(string cell) => double.Parse(cell.Split(' ')[0], CultureInfo.InvariantCulture);

    private static string InRepository(string path, [CallerFilePath] string here = "")
        => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../..", path));
}
