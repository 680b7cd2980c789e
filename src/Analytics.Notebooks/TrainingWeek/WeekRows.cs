using Analytics.Notebooks.AthletePage;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>What was left out of the files, and which files there were.</summary>
internal static class WeekRows
{
    private const string Folder = "training/";

    public static ReportBlock HeldBack(WeekView view)
    {
        var season = view.Week.Season;
        if (view.Only is { } only) return Own(season, only);
        var rows = season.HeldBack.Where(r => r.File.StartsWith(Folder, StringComparison.OrdinalIgnoreCase)).ToList();
        var files = season.Files.Where(f => f.Path.StartsWith(Folder, StringComparison.OrdinalIgnoreCase)).ToList();
        var notes = season.Notes.Where(n => n.File.StartsWith(Folder, StringComparison.OrdinalIgnoreCase)).ToList();
        return new Section("What we left out",
            Invariant($"Of the whole season {season.RowsRead} rows read, {season.RowsKept} kept, {season.RowsHeldBack} held back; of the folder training {files.Sum(f => f.Rows)} read, {files.Sum(f => f.Kept)} kept, {files.Sum(f => f.HeldBack)} held back."),
            rows.Count == 0 ? new Together() : Table(rows),
            notes.Count == 0 ? new Together() : new Folded($"Remarks on the files: {notes.Count}", [.. notes.Take(200).Select(n => new Note($"{n.File}: {n.Text}"))]) { ScreenOnly = true });
    }

    public static ReportBlock Provenance(WeekView view)
    {
        var own = view.Week.Training.OwnFiles;
        (string, string)[] about =
        [
            ("Week", $"{Words.Date(view.Week.Choice.Monday)} to {Words.Date(view.Week.Choice.Monday.AddDays(6))}"),
            ("Training files", own.Count == 0 ? "none of the season's own; all come with the kit" : $"{string.Join(", ", own)}; the rest comes with the kit"),
        ];
        // A file may be named after a player.
        if (view.Only is not null) return new Folded("Where this comes from", new Definitions([("Season", view.Week.Season.Settings.Season), .. about]));
        return new Together(ProvenanceBlock.Of(view.Week.Season, about));
    }

    // A remark that may tell of somebody else is left to the coach's page.
    private static ReportBlock Own(SeasonData season, Athlete player)
    {
        var rows = season.HeldBack.Where(r => r.AthleteId == player.Id).ToList();
        if (rows.Count == 0) return new Together();
        var filter = new OthersFilter(season, player);
        var shown = rows.Where(r => !new[] { r.File, r.Column, r.Value, r.Reason, r.Remedy }.Any(filter.Tells)).ToList();
        return new Folded(Invariant($"{rows.Count} of your rows {(rows.Count == 1 ? "was" : "were")} held back and not used; your coach can mend {(rows.Count == 1 ? "it" : "them")}"), [Table(shown)]) { ScreenOnly = true };
    }

    private static DataTable Table(IReadOnlyList<HeldBackRow> rows) => DataTable.Of("Rows that were held back", rows, t => t
        .Text("Where", r => new Cell(r.Line > 0 ? Invariant($"{r.File}, line {r.Line}") : r.File, r.Column))
        .Text("Value", r => r.Value)
        .Text("What is wrong", r => r.Reason)
        .Text("What would mend it", r => r.Remedy), 200);
}
