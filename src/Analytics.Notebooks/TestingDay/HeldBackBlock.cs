using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Season;

namespace Analytics.Notebooks.TestingDay;

/// <summary>What was left out, and what would mend it.</summary>
internal static class HeldBackBlock
{
    private const int Shown = 200;

    public static Block Of(DayContext day) => Of(day.Season, day.Today.Date);

    /// <summary>What was left out of one testing day, and of the rest of the season folded away.</summary>
    public static Block Of(SeasonData season, DateOnly day)
    {
        var prefix = "testing/" + day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var today = season.HeldBack.Where(r => r.File.StartsWith(prefix, StringComparison.Ordinal) || r.File.Contains("/" + prefix, StringComparison.Ordinal)).ToList();
        var other = season.HeldBack.Except(today).ToList();
        List<Block> blocks = [new Callout(Headline(season), season.HeldBack.Count == 0 ? [] : [$"{From(today.Sum(r => r.Rows), other.Sum(r => r.Rows))} Nothing below was used."])];
        if (today.Count > 0) blocks.Add(Table(season, "Held back from today's sheets", today));
        if (other.Count > 0) blocks.Add(new Folded($"Held back from the rest of the season: {other.Count}", [Table(season, "Held back from the rest of the season", other)]));
        return new Section(Title, "", [.. blocks, .. Remarks(season)]);
    }

    /// <summary>What was left out of a whole season.</summary>
    public static Block Of(SeasonData season)
    {
        List<Block> blocks = [new Callout(Headline(season), season.HeldBack.Count == 0 ? [] : ["No row listed below went into any number."])];
        if (season.HeldBack.Count > 0) blocks.Add(new Folded(season.HeldBack.Count == season.RowsHeldBack ? $"Held back: {season.RowsHeldBack}" : $"Held back: {season.RowsHeldBack} rows in {season.HeldBack.Count} entries", [Table(season, "Held back", season.HeldBack)]));
        return new Section(Title, "", [.. blocks, .. Remarks(season)]);
    }

    private const string Title = "What we left out";

    private static string Headline(SeasonData season) => $"{season.RowsRead} rows read, {season.RowsKept} kept, {season.RowsHeldBack} held back.";

    private static IEnumerable<Block> Remarks(SeasonData season)
    {
        if (season.Notes.Count > 0)
            yield return new Folded($"Remarks on the files: {season.Notes.Count}", 
            [
                .. season.Notes.Take(Shown).Select(n => new Note($"{n.File}: {n.Text}")),
                .. season.Notes.Count > Shown ? [new Note($"And {season.Notes.Count - Shown} more; the command check lists all.")] : Array.Empty<Note>(),
            ]);
    }

    private static string From(int today, int rest)
        => rest == 0 ? "All from today's sheets." : today == 0 ? "None from today's sheets." : $"{today} from today's sheets, {rest} from the rest of the season.";

    private static DataTable Table(SeasonData season, string caption, IReadOnlyList<HeldBackRow> rows) => DataTable.Of(caption, rows, t => t
        .Text("Where", r => new Cell(r.Line > 0 ? $"{r.File}, line {r.Line}" : r.File, r.Rows > 1 ? $"{r.Column} ({r.Rows} rows)" : r.Column))
        .Text("Player", r => r.AthleteId is { } id ? season.Athletes.FirstOrDefault(a => a.Id == id)?.Name ?? id : null)
        .Text("Value", r => r.Value)
        .Text("What is wrong", r => r.Reason)
        .Text("What would mend it", r => r.Remedy), Shown);
}
