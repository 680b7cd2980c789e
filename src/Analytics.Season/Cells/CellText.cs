using System.Globalization;

namespace Analytics.Season.Cells;

/// <summary>Cells and numbers as messages show them.</summary>
internal static class CellText
{
    /// <summary>Longest cell shown in a message, in characters.</summary>
    public const int LongestShown = 60;

    /// <summary>The cell on one line, shortened if very long, and marked as text of a cell (<see cref="CellMarks"/>).</summary>
    public static string Show(string cell) => CellMarks.Text(OneLine(cell));

    /// <summary>The cell on one line, shortened if very long.</summary>
    public static string OneLine(string cell)
    {
        var length = cell.Length;
        var start = length > LongestShown ? cell[..(LongestShown - 1)] : cell;
        var flat = string.Concat(start.Select(c => char.IsControl(c) || char.IsSurrogate(c) && length > LongestShown ? ' ' : c));
        return length > LongestShown ? string.Create(CultureInfo.InvariantCulture, $"{flat}… ({length} characters)") : flat;
    }

    /// <summary>A number in full, invariant.</summary>
    public static string Exact(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A limit with three figures, rounded the way that keeps it true: a low limit up, a high one down.</summary>
    public static string Limit(double value, bool isLow)
    {
        if (value == Math.Round(value) || value is 0) return Number(value);
        var step = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 2);
        return Number(isLow ? Math.Ceiling(value / step - 1e-9) * step : Math.Floor(value / step + 1e-9) * step);
    }

    /// <summary>A number with at most four significant decimals, invariant.</summary>
    public static string Number(double value) => Math.Abs(value) switch
    {
        0 => "0",
        >= 1e7 or < 1e-4 => value.ToString("G4", CultureInfo.InvariantCulture),
        >= 1000 => value.ToString("0.#", CultureInfo.InvariantCulture),
        >= 10 => value.ToString("0.##", CultureInfo.InvariantCulture),
        _ => value.ToString("0.####", CultureInfo.InvariantCulture),
    };
}
