using System.Globalization;

namespace Analytics.Season;

/// <summary>The outcome of reading a season as plain text lines, for a terminal or a file.</summary>
public static class SeasonCheckText
{
    /// <summary>Exit code of a check: 0 when everything was kept, 2 when anything was held back.</summary>
    /// <param name="season">The season as read.</param>
    /// <remarks>A season that cannot be read at all (<see cref="SeasonException"/>) also ends with 2.</remarks>
    public static int ExitCode(SeasonData season) => season.HeldBack.Count is 0 ? 0 : 2;

    /// <summary>The lines: counts for each file, what was held back with its remedy, remarks, and a verdict.</summary>
    /// <param name="season">The season as read.</param>
    /// <param name="mostPerFile">Most entries listed for one file; a line says how many more there are.</param>
    public static IReadOnlyList<string> Lines(SeasonData season, int mostPerFile = 100)
    {
        var lines = new List<string>
        {
            $"{OneLine(season.Settings.Club)}, {OneLine(season.Settings.Season)}: {Count(season.Athletes.Count, "athlete")}, {Count(season.Days.Count, "testing day")}, {Count(season.Sessions.Count, "training session")}",
            "",
        };
        AddFiles(lines, season);
        AddHeldBack(lines, season, mostPerFile);
        AddNotes(lines, season);
        lines.Add(Verdict(season));
        return lines;
    }

    private static void AddFiles(List<string> lines, SeasonData season)
    {
        var width = Math.Clamp(season.Files.Max(f => f.Path.Length), 4, 60);
        lines.Add($"{"file".PadRight(width)}  {"rows",9}  {"kept",9}  {"held back",9}");
        foreach (var file in season.Files)
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"{OneLine(file.Path).PadRight(width)}  {file.Rows,9}  {file.Kept,9}  {file.HeldBack,9}"));
        lines.Add(string.Create(CultureInfo.InvariantCulture, $"{"all".PadRight(width)}  {season.RowsRead,9}  {season.RowsKept,9}  {season.RowsHeldBack,9}"));
        lines.Add("");
    }

    private static void AddHeldBack(List<string> lines, SeasonData season, int mostPerFile)
    {
        if (season.HeldBack.Count is 0) return;
        lines.Add("Held back");
        foreach (var file in season.HeldBack.GroupBy(h => h.File))
        {
            // One mistake made on every row is read once, under all its places.
            foreach (var same in file.Take(mostPerFile).GroupBy(h => (h.Reason, h.Remedy)))
            {
                lines.AddRange(same.Select(h => $"  {Place(h)}"));
                lines.Add($"    {OneLine(same.Key.Reason)}");
                lines.Add($"    To mend it: {OneLine(same.Key.Remedy)}");
            }

            var more = file.Count() - mostPerFile;
            if (more > 0) lines.Add($"  {OneLine(file.Key)}: {Count(more, "more entry", "more entries")} not shown");
        }

        lines.Add("");
    }

    private static void AddNotes(List<string> lines, SeasonData season)
    {
        if (season.Notes.Count is 0) return;
        lines.Add("Remarks (nothing was held back for these)");
        foreach (var note in season.Notes) lines.Add($"  {(note.File.Length > 0 ? OneLine(note.File) + ": " : "")}{OneLine(note.Text)}");
        lines.Add("");
    }

    private static string Place(HeldBackRow held)
    {
        var line = held.Line > 0 ? string.Create(CultureInfo.InvariantCulture, $", line {held.Line}") : "";
        var column = held.Column.Length > 0 ? $", column {OneLine(held.Column)}" : "";
        var value = held.Value.Length > 0 ? $", value '{OneLine(held.Value)}'" : "";
        var rows = held.Rows > 1 ? $" ({Count(held.Rows, "row")})" : "";
        return OneLine(held.File) + line + column + value + rows;
    }

    private static string Verdict(SeasonData season)
    {
        if (season.HeldBack.Count is 0) return $"All {Count(season.RowsRead, "row")} read were kept.";
        var unread = season.HeldBack.Count(h => h.Rows is 0);
        var besides = unread > 0 ? $", and {Count(unread, "file or cell", "files or cells")} left out" : "";
        return $"{Count(season.RowsRead, "row")} read: {season.RowsKept.ToString(CultureInfo.InvariantCulture)} kept, {season.RowsHeldBack.ToString(CultureInfo.InvariantCulture)} held back{besides}.";
    }

    private static string Count(int number, string one, string? many = null)
        => string.Create(CultureInfo.InvariantCulture, $"{number} {(number is 1 ? one : many ?? one + "s")}");

    /// <summary>Text from files must not move the cursor or break the line.</summary>
    private static string OneLine(string text) => string.Concat(text.Select(c => char.IsControl(c) ? ' ' : c));
}
