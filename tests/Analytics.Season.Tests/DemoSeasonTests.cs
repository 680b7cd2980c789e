using Analytics.Season.Tests.Support;

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
}
