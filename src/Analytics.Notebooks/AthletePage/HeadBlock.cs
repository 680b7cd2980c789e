using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.AthletePage;

/// <summary>Name, club, position, days.</summary>
internal static class HeadBlock
{
    public static ReportBlock Of(PlayerPage page)
    {
        var place = string.Join(", ", new[] { page.Player.Position, page.Player.Group }.Where(t => t.Length > 0).Distinct());
        string[] parts = [place, When(page), page.Status.Spell is null ? "" : page.Status.Text];
        return new ReportHead(page.Player.Name, page.Season.Settings.Club, string.Join(" \u00b7 ", parts.Where(p => p.Length > 0)));
    }

    private static string When(PlayerPage page)
    {
        if (page.Tested is not { } tested) return $"{Words.Date(page.Today)}, not tested yet";
        var day = tested == page.Today ? $"tested {Words.Date(tested)}" : $"{Words.Date(page.Today)}, last tested {PageWords.Day(tested, page.Today)}";
        return Compared(page) is { } before ? $"{day}, compared with {PageWords.Day(before, page.Today)}" : day;
    }

    /// <summary>The day most tests are compared with; null when none is.</summary>
    public static DateOnly? Compared(PlayerPage page)
        => page.Measures.Where(m => m.Change is not null).Select(m => (DateOnly?)m.Before!.Date)
            .GroupBy(d => d).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).Select(g => g.Key).FirstOrDefault();
}
