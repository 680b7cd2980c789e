using System.Text.RegularExpressions;
using Analytics.Season.Cells;
using Analytics.Season.Clips;

namespace Analytics.Season.Sharing;

/// <summary>What was held back and remarked in a shared season: the kit's words stay, what was typed does not.</summary>
internal sealed partial class SharedMessages(SharedNames names, SharedPaths paths, bool hidesLines)
{
    private static readonly HashSet<string> PersonColumns = new(["athlete_id", "name", "against"], StringComparer.Ordinal);
    private static readonly HashSet<string> ClipColumns = new(["", "frame", "marker", "x_px", "y_px", "time_s"], StringComparer.Ordinal);

    /// <summary>A row that was held back.</summary>
    public HeldBackRow HeldBack(HeldBackRow row)
    {
        var column = Words.Normal(CellMarks.Strip(row.Column));
        var shared = row with
        {
            File = paths.Path(row.File),
            Line = hidesLines ? 0 : row.Line,
            // A clip may call its columns as it likes.
            Column = row.File.Contains($"/{ClipShelf.FolderName}/", StringComparison.OrdinalIgnoreCase) && !ClipColumns.Contains(column) ? SharedNames.NotShown : names.Message(row.Column),
            Value = PersonColumns.Contains(column) ? names.Person(CellMarks.Strip(row.Value)) : names.Message(row.Value),
            Reason = Text(row.Reason),
            Remedy = Text(row.Remedy),
            AthleteId = row.AthleteId is { } id ? names.Of(id) : null,
        };
        var isCut = shared.Line != row.Line || shared.Value.Contains(SharedNames.NotShown, StringComparison.Ordinal) || shared.Reason.Contains(SharedNames.NotShown, StringComparison.Ordinal);
        return isCut ? shared with { Remedy = $"{shared.Remedy} The command check shows where it stands and what." } : shared;
    }

    /// <summary>A remark.</summary>
    public InputNote Note(InputNote note) => new(paths.Path(note.File), Text(note.Text));

    // Sheets mostly go by the squad list: a line would tell who it is.
    private string Text(string message) => hidesLines ? Line().Replace(names.Message(message), m => char.IsUpper(m.Value[0]) ? "A line" : "a line") : names.Message(message);

    [GeneratedRegex(@"\b[Ll]ine \d+\b")]
    private static partial Regex Line();
}
