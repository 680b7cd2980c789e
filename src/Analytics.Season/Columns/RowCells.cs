using Analytics.Season.Cells;
using Analytics.Season.Tables;

namespace Analytics.Season.Columns;

/// <summary>The current row of a table: typed access to its cells, and what is wrong with them.</summary>
internal sealed class RowCells(HeadMap head, Table table)
{
    private readonly List<CellFault> faults = [];
    private readonly HashSet<string> remarks = new(StringComparer.Ordinal);
    private readonly HashSet<string> notTaken = new(StringComparer.Ordinal);
    private TableRow row;

    /// <summary>The head of the table.</summary>
    public HeadMap Head => head;

    /// <summary>Identifier of the known athlete the row is about; null when it names none.</summary>
    public string? About { get; set; }

    /// <summary>Line of the row.</summary>
    public int Line => row.Line;

    /// <summary>What was remarked in any row so far, each once.</summary>
    public IReadOnlyCollection<string> Remarks => remarks;

    /// <summary>What is wrong with the row, in the order found.</summary>
    public IReadOnlyList<CellFault> Faults => faults;

    /// <summary>Goes to the next row and checks its shape.</summary>
    public void MoveTo(TableRow next)
    {
        row = next;
        faults.Clear();
        About = null;
        var columns = table.Head.Count;
        for (var i = columns; i < row.Count; i++)
        {
            if (string.IsNullOrWhiteSpace(row.Cells[i])) continue;
            Fault("", row.Cells[i], $"the row has {row.Count} cells, the head has {columns} columns", "Take out the extra separator, or put quotes round a text that holds one.");
            break;
        }

        foreach (var index in head.UnnamedColumns)
            if (!string.IsNullOrWhiteSpace(row[index])) Fault("", row[index], $"column {index + 1} has a value but no head", "Give the column a head, or empty it.");
    }

    /// <summary>Text of a cell without outer spaces; empty when there is none.</summary>
    public string Text(Column column) => head[column] is [var place, ..] ? row[place.Index].Trim() : "";

    /// <summary>Text at a place of a column that may stand in several units, without outer spaces.</summary>
    public string TextAt(Binding place) => row[place.Index].Trim();

    /// <summary>Text that must be there.</summary>
    public string NeedText(Column column, string what)
    {
        var text = Text(column);
        if (text.Length is 0) Fault(head.HeadOf(column), "", $"there is no {what}", $"Fill in the {what}.");
        return text;
    }

    /// <summary>
    /// A short text on one line with single spaces, such as who took a test; null when the cell is empty. One that cannot be used is not taken, with a remark where it stands first, since the row is
    /// of use without it.
    /// </summary>
    public string? ShortText(Column column, string what, int longest)
    {
        var text = string.Join(' ', Text(column).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (text.Length is 0) return null;
        var wrong = text.Length > longest ? $"it has {text.Length} characters, and at most {longest} are allowed"
            : !text.Any(char.IsLetterOrDigit) ? "it holds no letter or figure"
            : text.Any(char.IsControl) ? "it holds control characters"
            : null;
        if (wrong is null) return text;
        if (notTaken.Add(text))
            remarks.Add($"Line {Line} has the {what} '{CellMarks.Person(text)}', which was not taken: {wrong}. The rest of the row was read as usual. Write initials, a number or a short word, or leave the cell empty.");
        return null;
    }

    /// <summary>An identifier that must be there, in lower case with underscores. One that is not among the known is read as it stands, with a remark.</summary>
    /// <param name="column">Column.</param>
    /// <param name="what">What it names, in words.</param>
    /// <param name="known">The known ones, listed in the remark.</param>
    /// <param name="isKnownToo">Others that are known, too many to be listed; null for none.</param>
    public string NeedIdentifier(Column column, string what, IReadOnlyList<string> known, Func<string, bool>? isKnownToo = null)
    {
        var text = NeedText(column, what);
        if (text.Length is 0 || known.Contains(text)) return text;
        if (text.Length > CellText.LongestShown || text.Any(char.IsControl))
        {
            Fault(head.HeadOf(column), text, $"'{CellText.Show(text)}' is too long for a {what}, or holds line breaks", $"Write a short name for the {what}; take out stray quotes.");
            return "";
        }

        var id = string.Intern(Words.Normal(text));
        if (!known.Contains(id) && isKnownToo?.Invoke(id) is not true)
            remarks.Add($"The {what} '{CellText.Show(text)}' is not a known one and was read as it stands{(NearWord.Of(id, known) is { } near ? $"; did you mean {near}?" : ".")} Known: {string.Join(", ", known)}.");
        return id;
    }

    /// <summary>A word of a set; null when the cell is empty or wrong.</summary>
    public T? Word<T>(Column column, WordSet<T> words) where T : struct
    {
        var text = Text(column);
        if (text.Length is 0) return null;
        var meaning = words.Find(text);
        if (meaning is null) Fault(head.HeadOf(column), text, $"the {words.What} '{CellText.Show(text)}' is not known", $"Use one of: {words.Accepted}.");
        return meaning;
    }

    /// <summary>A word of a set, or the season's default when the cell is empty.</summary>
    public T NeedWord<T>(Column column, WordSet<T> words, T? standard, string setting) where T : struct
    {
        if (Text(column).Length > 0) return Word(column, words) ?? default;
        if (standard is { } meaning) return meaning;
        Fault(head.HeadOf(column), "", $"there is no {words.What}", setting.Length is 0
            ? $"Write one of: {words.Accepted}."
            : $"Write one of: {words.Accepted}; or set \"{setting}\" under \"defaults\" in season.json.");
        return default;
    }

    /// <summary>A plain number; null when the cell is empty or wrong.</summary>
    public double? Number(NumberColumn column)
    {
        if (head[column] is not [var place, ..]) return null;
        var cell = row[place.Index];
        if (cell.Length is 0 || string.IsNullOrWhiteSpace(cell)) return null;
        var value = NumberCell.Read(cell, column.Low, column.High, out var problem, table: table);
        if (value is { } number && column.Whole && number != Math.Floor(number))
            problem = new CellProblem($"{CellText.Number(number)} is not a whole number", "Write a whole number.");
        if (problem is null) return value;
        Fault(place.Head, cell, problem.Reason, problem.Remedy);
        return null;
    }

    /// <summary>A whole number that must be there; 0 when it is not.</summary>
    public int NeedWhole(NumberColumn column, string what)
    {
        if (Number(column) is { } number) return (int)number;
        if (Text(column).Length is 0) Fault(head.HeadOf(column), "", $"there is no {what}", $"Fill in the {what}.");
        return 0;
    }

    /// <summary>A quantity in SI; null when the cell is empty or wrong.</summary>
    public double? Quantity(QuantityColumn column)
    {
        Binding? from = null;
        double? si = null;
        foreach (var place in head[column])
        {
            var cell = row[place.Index];
            if (cell.Length is 0 || string.IsNullOrWhiteSpace(cell)) continue;
            var unit = place.Unit!;
            var value = NumberCell.Read(cell, column.Low / unit.ToSi, column.High / unit.ToSi, out var problem, unit, column.Units, table);
            if (problem is not null)
            {
                Fault(place.Head, cell, problem.Reason, problem.Remedy);
                return null;
            }

            var inSi = value!.Value * unit.ToSi;
            if (si is { } first && Math.Abs(inSi - first) > 0.01 * first)
                Fault(place.Head, cell, $"'{place.Head}' and '{from!.Head}' do not agree", "Leave one of the two cells empty.");
            (si, from) = (si ?? inSi, from ?? place);
        }

        return si;
    }

    /// <summary>A quantity in SI that must be there; NaN when it is not, and then the row has a fault.</summary>
    public double NeedQuantity(QuantityColumn column, string what)
    {
        var before = faults.Count;
        if (Quantity(column) is { } si) return si;
        if (faults.Count == before) Fault(head.HeadOf(column), "", $"there is no {what}", $"Fill in the {what}, or delete the row.");
        return double.NaN;
    }

    /// <summary>A date; null when the cell is empty or wrong.</summary>
    public DateOnly? Date(Column column)
    {
        var text = Text(column);
        if (text.Length is 0) return null;
        var date = DateText.Read(text, table.HasSerialDates);
        if (date is null) Fault(head.HeadOf(column), text, $"'{CellText.Show(text)}' is not a date", "Write dates as year-month-day: 2026-03-02.");
        return date;
    }

    /// <summary>Says what is wrong with a cell.</summary>
    public void Fault(string column, string value, string reason, string remedy) => faults.Add(new CellFault(column, CellText.Show(value), reason, remedy));

    /// <summary>Takes back all faults found since there were this many, and hands them over.</summary>
    public IReadOnlyList<CellFault> TakeFaultsFrom(int count)
    {
        var taken = faults.GetRange(count, faults.Count - count);
        faults.RemoveRange(count, taken.Count);
        return taken;
    }
}

/// <summary>What is wrong with a cell, and what would mend it.</summary>
internal sealed record CellFault(string Column, string Value, string Reason, string Remedy);
