using Analytics.Season.Tests.Support;
using Analytics.Season.Training;

namespace Analytics.Season.Tests;

/// <summary>The demo season has slips put in on purpose, with their places written beside it: exactly these must be held back.</summary>
public sealed class DemoSeasonTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "data-demo");

    [Fact]
    public void Read_DemoSeason_HoldsBackThePlantedSlipsAndNothingElse()
    {
        var data = SeasonReader.Read(Folder);

        Ledger.Check(data);
        var planted = File.ReadLines(Path.Combine(Folder, "truth", "typing-errors.csv")).Skip(1)
            .Select(l => l.Split(',')).Select(c => (File: c[1], Line: int.Parse(c[2], System.Globalization.CultureInfo.InvariantCulture), Column: c[3]));
        // A clip goes with the row that names it.
        var clip = Assert.Single(data.HeldBack, h => h.File.Contains("/clips/", StringComparison.Ordinal));
        Assert.Contains("the row that names this clip, testing/2026-06-08/contact.csv", clip.Reason, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(planted.OrderBy(p => p.File, StringComparer.Ordinal).ThenBy(p => p.Line), data.HeldBack.Where(h => h != clip).Select(h => (h.File, h.Line, h.Column)).OrderBy(p => p.File, StringComparer.Ordinal).ThenBy(p => p.Line));
        Assert.NotEmpty(data.HeldBack);
        Assert.Contains("the rate looks like 240 Hz", data.HeldBack.Single(h => h.Column == "rate_hz").Reason, StringComparison.Ordinal);
        Assert.Contains("looks like kg", data.HeldBack.Single(h => h.Column == "mass_lb").Reason, StringComparison.Ordinal);
    }

    /// <summary>Two weeks of four training days after the last testing day, the strength days in two waves.</summary>
    [Fact]
    public void Read_DemoSeason_HasTwoWeeksToPlan()
    {
        var data = SeasonReader.Read(Folder);
        var training = data.Training;

        Assert.Equal(["exercises.csv", "rooms.csv", "weights.csv", "calendar.csv", "restrictions.csv"], training.OwnFiles);
        Assert.DoesNotContain(data.Notes, n => n.File.StartsWith("training", StringComparison.Ordinal));
        Assert.Equal(10, training.Sessions.Count);
        Assert.Equal((new DateOnly(2026, 6, 15), new DateOnly(2026, 6, 26)), (training.Sessions[0].Date, training.Sessions[^1].Date));
        foreach (var group in data.Athletes.Select(a => a.Group).Distinct()) Assert.Equal(8, training.Sessions.Count(s => s.Has(group)));
        Assert.Equal(["TC07", "TC24", "TC53", "TC49"], training.Restrictions.Select(r => r.AthleteId).Distinct());
        Assert.Equal(["turf hall", "weight room"], training.Rooms.Select(r => r.Id).Order(StringComparer.Ordinal));
        Assert.Equal(File.ReadAllText(Path.Combine(Folder, "training", "exercises.csv")), ShippedTraining.Text("exercises.csv"));
    }
}
