using System.Globalization;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Training;

/// <summary>Cells of the tables of <c>training</c>: words with the nearest known one, lists joined by +, times of day.</summary>
internal static class TrainingCells
{
    /// <summary>Longest text of one's own, in characters.</summary>
    public const int LongestText = 300;

    private static readonly string[] Times = ["H:mm", "HH:mm", "H:mm:ss", "HH:mm:ss"];

    /// <summary>Says what is wrong with a cell of the row.</summary>
    public static void Wrong(this RowCells row, Column column, string reason, string remedy) => row.Fault(row.Head.HeadOf(column), row.Written(column), reason, remedy);

    /// <summary>What stands in a column, in whichever unit; empty when nothing does.</summary>
    public static string Written(this RowCells row, Column column) => row.Head[column].Select(row.TextAt).FirstOrDefault(t => t.Length > 0, "");

    /// <summary>A word of a set; null when the cell is empty or wrong. A wrong one is told with the nearest.</summary>
    public static T? Known<T>(this RowCells row, Column column, WordSet<T> words) where T : struct
    {
        var text = row.Text(column);
        if (text.Length is 0) return null;
        if (words.Find(text) is { } meaning) return meaning;
        row.Unknown(column, words.What, text, words.All, $"Use one of: {words.Accepted}.");
        return null;
    }

    /// <summary>A word of a set that must be there; the first when it is not, and then the row has a fault.</summary>
    public static T NeedKnown<T>(this RowCells row, Column column, WordSet<T> words) where T : struct
    {
        if (row.Text(column).Length is 0) row.Wrong(column, $"there is no {words.What}", $"Write one of: {words.Accepted}.");
        return row.Known(column, words) ?? default;
    }

    /// <summary>Words of a set joined by +, each once.</summary>
    public static IReadOnlyList<T> KnownList<T>(this RowCells row, Column column, WordSet<T> words) where T : struct
    {
        var meanings = new List<T>();
        foreach (var part in row.Parts(column))
        {
            if (words.Find(part) is not { } meaning) row.Unknown(column, words.What, part, words.All, $"Use one of: {words.Accepted}; join several by +.");
            else if (!meanings.Contains(meaning)) meanings.Add(meaning);
        }

        return meanings;
    }

    /// <summary>Parts of a cell joined by +, as written.</summary>
    public static string[] Parts(this RowCells row, Column column) => row.Text(column).Split('+', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The known one that is meant, as it is written where it is known; null, with a fault that names the nearest, when there is none.</summary>
    /// <param name="row">The row.</param>
    /// <param name="column">Its column.</param>
    /// <param name="what">What it is: "exercise".</param>
    /// <param name="text">As written.</param>
    /// <param name="known">Known ones.</param>
    /// <param name="file">File in which they stand.</param>
    public static string? Refer(this RowCells row, Column column, string what, string text, IReadOnlyCollection<string> known, string file)
    {
        if (known.FirstOrDefault(k => k == text) is { } same) return same;
        var normal = Words.Normal(text);
        if (known.FirstOrDefault(k => Words.Normal(k) == normal) is { } meant) return meant;
        row.Unknown(column, what, text, known, known.Count is > 0 and <= 12 ? $"Use one of: {string.Join(", ", known.Select(CellText.Show))}; or add it to {file}." : $"Correct it, or add it to {file}.");
        return null;
    }

    /// <summary>Says that a word is not known, and which known one is near.</summary>
    public static void Unknown(this RowCells row, Column column, string what, string text, IEnumerable<string> known, string remedy)
    {
        var near = NearWord.Of(Words.Normal(text), known);
        row.Wrong(column, $"the {what} '{CellText.Show(text)}' is not known{(near is null ? "" : $"; did you mean {CellText.Show(near)}?")}", remedy);
    }

    /// <summary>An identifier that must be there, in lower case with underscores; empty when it is not, and then the row has a fault.</summary>
    public static string NeedId(this RowCells row, Column column, string what)
    {
        if (row.NeedText(column, what).Length is 0) return "";
        return row.Id(column, what);
    }

    /// <summary>An identifier in lower case with underscores; empty when the cell is empty or wrong.</summary>
    public static string Id(this RowCells row, Column column, string what)
    {
        var text = row.Text(column);
        var wrong = text.Length > CellText.LongestShown || text.Any(char.IsControl) || text.Contains('+', StringComparison.Ordinal) || text.Length > 0 && !text.Any(char.IsLetterOrDigit);
        if (!wrong) return Words.Normal(text);
        row.Wrong(column, $"'{CellText.Show(text)}' cannot be the name of a {what}: it is too long, holds a + or line breaks, or has no letter", $"Write a short name for the {what}, such as back_squat.");
        return "";
    }

    /// <summary>A text of one's own on one line; empty when the cell is empty or wrong.</summary>
    public static string Free(this RowCells row, Column column, string what, int longest = LongestText)
    {
        var text = string.Join(' ', row.Text(column).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (text.Length <= longest && !text.Any(char.IsControl)) return text;
        row.Wrong(column, $"the {what} has {text.Length.ToString(CultureInfo.InvariantCulture)} characters or holds control characters; at most {longest.ToString(CultureInfo.InvariantCulture)} are allowed", "Shorten it; take out stray quotes.");
        return "";
    }

    /// <summary>A time of day; null when the cell is empty or wrong.</summary>
    public static TimeOnly? Time(this RowCells row, Column column)
    {
        var text = row.Text(column);
        if (text.Length is 0) return null;
        if (TimeOnly.TryParseExact(text, Times, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)) return time;
        row.Wrong(column, $"'{CellText.Show(text)}' is not a time of day", "Write hours and minutes, 0 to 23 hours: 7:30, 16:00.");
        return null;
    }

    /// <summary>A date of the season; null when the cell is empty or wrong.</summary>
    public static DateOnly? DayOf(this RowCells row, Column column, SeasonSettings settings)
    {
        row.NeedText(column, "date");
        var date = row.Date(column);
        if (date is not { } day || (day >= settings.From && day <= settings.To)) return date;
        row.Wrong(column, $"{DateText.Iso(day)} is outside the season, {DateText.Iso(settings.From)} to {DateText.Iso(settings.To)}", "Correct the date, or \"from\" and \"to\" in season.json.");
        return null;
    }

    /// <summary>Says so when a range is upside down.</summary>
    public static void Rising(this RowCells row, Column most, double? low, double? high, string what)
    {
        if (low > high) row.Wrong(most, $"the {what} is upside down: the most is less than the least", "Swap or correct the two cells.");
    }
}
