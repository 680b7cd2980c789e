using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.TestingDay;

/// <summary>Seasons for the tests of the report, and all its blocks.</summary>
internal static class ReportSeasons
{
    /// <summary>Puts another value behind the start of a line of the last day.</summary>
    public static void Replace(WrittenSeason season, string file, string start, string value)
    {
        var path = Path.Combine(season.Folder, "testing", "2026-03-02", file);
        var lines = File.ReadAllLines(path);
        var at = Array.FindIndex(lines, l => l.StartsWith(start, StringComparison.Ordinal));
        lines[at] = start + value;
        File.WriteAllLines(path, lines);
    }

    public static void OnlyTenMetres(WrittenSeason season, string day)
    {
        var path = Path.Combine(season.Folder, "testing", day, "sprints.csv");
        File.WriteAllLines(path, File.ReadAllLines(path).Select(l => l.Split(';')).Select(c => string.Join(';', [.. c[..4], c[5]])));
    }

    public static void OnlyOnePlayer(WrittenSeason season)
        => season.Keep("", l => l.StartsWith("P01", StringComparison.Ordinal));

    public static WrittenSeason ThreeDays(double squatGain = 0)
        => new WrittenSeason().Squad().Day("2026-01-12").Day("2026-01-15", wobble: 1).Day("2026-03-02", squatGain, wobble: 2);

    public static IEnumerable<Analytics.Notebooks.Blocks.Block> All(TestingDayReport report) =>
    [
        report.Head(), report.Answers(), report.WhoWasTested(), report.WhereGroupsStand(), report.WhoChanged(), report.WhatPlayersCarry(), report.Needs(),
        report.Results(), report.HeldBack(), report.Methods(), report.Cautions(), report.Provenance(),
    ];
}
