using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.TestingDay;

/// <summary>What was left out, and what would mend it.</summary>
internal static class HeldBackBlock
{
    private const int Shown = 200;

    public static Block Of(DayContext day)
    {
        var season = day.Season;
        var headline = $"{season.RowsRead} rows read, {season.RowsKept} kept, {season.RowsHeldBack} held back.";
        var prefix = "testing/" + day.Today.Date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        var today = season.HeldBack.Where(r => r.File.StartsWith(prefix, StringComparison.Ordinal) || r.File.Contains("/" + prefix, StringComparison.Ordinal)).ToList();
        var other = season.HeldBack.Except(today).ToList();
        List<Block> blocks = [new Callout(headline, season.HeldBack.Count == 0 ? [] : [$"{From(today.Sum(r => r.Rows), other.Sum(r => r.Rows))} Nothing below was used."])];
        if (today.Count > 0) blocks.Add(Table(day, "Held back from today's sheets", today));
        if (other.Count > 0) blocks.Add(new Folded($"Held back from the rest of the season: {other.Count}", [Table(day, "Held back from the rest of the season", other)]));
        if (season.Notes.Count > 0)
            blocks.Add(new Folded($"Remarks on the files: {season.Notes.Count}", [.. season.Notes.Take(Shown).Select(n => new Note($"{n.File}: {n.Text}"))]));
        return new Section("What we left out", "", [.. blocks]);
    }

    private static string From(int today, int rest)
        => rest == 0 ? "All from today's sheets." : today == 0 ? "None from today's sheets." : $"{today} from today's sheets, {rest} from the rest of the season.";

    private static DataTable Table(DayContext day, string caption, IReadOnlyList<Season.HeldBackRow> rows) => DataTable.Of(caption, rows, t => t
        .Text("Where", r => new Cell(r.Line > 0 ? $"{r.File}, line {r.Line}" : r.File, r.Rows > 1 ? $"{r.Column} ({r.Rows} rows)" : r.Column))
        .Text("Player", r => r.AthleteId is { } id ? day.Name(id) : null)
        .Text("Value", r => r.Value)
        .Text("What is wrong", r => r.Reason)
        .Text("What would mend it", r => r.Remedy), Shown);
}
