using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.AthletePage;
using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.Units;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.AthletePage;

/// <summary>A page may hold nothing of another player: no name, no identifier, no value.</summary>
public sealed class OthersPrivacyTests
{
    [Fact]
    public void Demo_AllSixtyPages_NameNobodyElse()
    {
        var season = Pages.Demo;
        Assert.Equal(60, season.Athletes.Count);
        foreach (var player in season.Athletes)
        {
            var text = Pages.Everything(AthletePageReport.Open(season, player.Id));
            Assert.Contains(player.Name, text, StringComparison.Ordinal);
            foreach (var other in season.Athletes.Where(a => a.Id != player.Id))
            {
                Assert.False(Pages.Holds(text, other.Id), $"{player.Id}: {other.Id}");
                Assert.False(text.Contains(other.Name, StringComparison.OrdinalIgnoreCase), $"{player.Id}: {other.Name}");
            }

            // Clips are named after players; only one of his own may be named, as a row held back.
            Assert.DoesNotContain("clips/", AthletePageReport.Open(season, player.Id).Provenance().ToText(), StringComparison.OrdinalIgnoreCase);
        }
    }

    // Swapped with each other, two others leave mean and spread as they are; any other trace of them would show.
    [Fact]
    public void Others_Swapped_LeaveThePageAsItIs()
    {
        using WrittenSeason before = Distinct(), after = Distinct();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(after.Folder, "testing"), "*.csv", SearchOption.AllDirectories))
            File.WriteAllText(file, File.ReadAllText(file).Replace("P03;", "#;", StringComparison.Ordinal).Replace("P05;", "P03;", StringComparison.Ordinal).Replace("#;", "P05;", StringComparison.Ordinal));
        SeasonData one = SeasonReader.Read(before.Folder), other = SeasonReader.Read(after.Folder);
        foreach (var id in new[] { "P01", "P02", "P08" })
            Assert.Equal(Pages.Everything(AthletePageReport.Open(one, id, barStep: 2.5)), Pages.Everything(AthletePageReport.Open(other, id, barStep: 2.5)));
        Assert.NotEqual(Pages.Everything(AthletePageReport.Open(one, "P03", barStep: 2.5)), Pages.Everything(AthletePageReport.Open(other, "P03", barStep: 2.5)));
    }

    // Every value of every player has digits of its own; group figures fall on none of them.
    [Fact]
    public void MadeSeason_NoValueOfAnotherPlayerOccurs()
    {
        using var folder = Distinct();
        var season = SeasonReader.Read(folder.Folder);
        var looked = 0;
        foreach (var player in season.Athletes)
        {
            var text = Pages.Everything(AthletePageReport.Open(season, player.Id, barStep: 2.5));
            var own = Values(season, player.Id).ToHashSet(StringComparer.Ordinal);
            Assert.Contains(own, v => Pages.Holds(text, v));
            foreach (var value in season.Athletes.Where(a => a.Id != player.Id).SelectMany(a => Values(season, a.Id)).Where(v => !own.Contains(v)))
            {
                looked++;
                Assert.False(Pages.Holds(text, value), $"{player.Id}: {value}");
            }
        }

        Assert.True(looked > 300, $"only {looked} looked at");
    }

    // Two players: his value and the mean would give the other's.
    [Theory]
    [InlineData(5, "group")]
    [InlineData(4, "squad")]
    public void Group_OfFewerThanFive_IsNotShown(int size, string shown)
    {
        using var folder = Distinct();
        folder.Write("athletes.csv", "athlete_id;name;position;group\n"
            + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};Player {WrittenSeason.Id(i)};X;{(i <= size ? "Ends" : "Backs")}"));
        var season = SeasonReader.Read(folder.Folder);
        var page = AthletePageReport.Open(season, "P01", barStep: 2.5);
        var text = page.WhereYouStand().ToText();
        Assert.Equal(shown == "squad", text.Contains("squad shown", StringComparison.Ordinal));
        Assert.Equal(shown == "squad", text.Contains("Positions differ", StringComparison.Ordinal));
        if (shown == "squad") Assert.Contains("Too few in your group", page.Answers().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Squad_OfFewerThanFive_ShowsNoFigureButOnesOwn()
    {
        using var folder = Distinct().Keep("", l => string.CompareOrdinal(l, "P05") < 0);
        var text = AthletePageReport.Open(SeasonReader.Read(folder.Folder), "P01", barStep: 2.5).WhereYouStand().ToText();
        Assert.Contains("Too few players", text, StringComparison.Ordinal);
        Assert.Contains("not compared", text, StringComparison.Ordinal);
        Assert.DoesNotContain("spreads", text, StringComparison.Ordinal);
    }

    [Fact]
    public void HeldBackRows_OnlyOnesOwnAreShown()
    {
        using var folder = Distinct();
        folder.Append("testing/2026-03-02/lifts.csv", "P01;bench_press;1;9123;1\nP02;bench_press;1;8456;1\n");
        var season = SeasonReader.Read(folder.Folder);
        var mine = AthletePageReport.Open(season, "P01", barStep: 2.5);
        Assert.Contains("9123", mine.LeftOut().ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain("8456", Pages.Everything(mine), StringComparison.Ordinal);
        Assert.Equal("", AthletePageReport.Open(season, "P03", barStep: 2.5).LeftOut().ToText());
    }

    private static IEnumerable<string> Values(SeasonData season, string id)
        => from day in season.Days
           from own in day.Athletes.Where(a => a.AthleteId == id)
           from metric in MetricCatalogue.All
           let unit = ShownUnit.For(metric, season.Settings)
           from value in MetricDay.Of(metric, [own]).Values
           let text = (unit.Of(value.Value)).ToString("F" + unit.Decimals, CultureInfo.InvariantCulture)
           // Shorter figures, such as a whole number of metres, say nothing about anybody.
           where text.Count(char.IsAsciiDigit) >= 4
           select text;

    // Chosen so that no range, mean or load of one player happens to print as the squat of another.
    private const double Lightest = 141.71;

    private static WrittenSeason Distinct()
    {
        var season = new WrittenSeason().Squad();
        foreach (var (date, more) in new[] { ("2026-01-12", 0.0), ("2026-01-15", 0.41), ("2026-03-02", 2.83) })
        {
            season.Write($"testing/{date}/lifts.csv", "athlete_id;lift;set;load_kg;reps\n" + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};back_squat;1;{Lightest + 17.93 * i + more * (i % 3 + 1):0.00};1"));
            season.Write($"testing/{date}/jumps.csv", "athlete_id;jump;method;attempt;height_cm\n" + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};countermovement;mat;1;{30.07 + 1.731 * i + more * (i % 4):0.000}"));
            season.Write($"testing/{date}/body.csv", "athlete_id;mass_kg\n" + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};{81.13 + 3.17 * i + more:0.00}"));
            season.Write($"testing/{date}/sprints.csv", "athlete_id;attempt;timing;start;t_5m_s;t_10m_s;t_20m_s\n"
                + WrittenSeason.Rows(i => $"{WrittenSeason.Id(i)};1;electronic;standing_beam;{1.021 + 0.0137 * i:0.000};{1.771 + 0.0173 * i + 0.003 * (i % 3):0.000};{3.057 + 0.0237 * i:0.000}"));
        }

        return season;
    }
}
