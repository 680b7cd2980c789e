using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Tables;

namespace Analytics.Season.Columns;

/// <summary>What is wrong with a number.</summary>
internal sealed record CellProblem(string Reason, string Remedy);

/// <summary>Reads a number and checks it against its range, saying which slip it looks like.</summary>
internal static class NumberCell
{
    /// <summary>The number; null with a problem when it cannot be used.</summary>
    /// <param name="cell">The cell, not empty.</param>
    /// <param name="low">Lowest allowed, in the unit of the cell.</param>
    /// <param name="high">Highest allowed, in the unit of the cell.</param>
    /// <param name="problem">What is wrong; null when nothing is.</param>
    /// <param name="unit">Unit of the cell, if it has one.</param>
    /// <param name="units">Units it could have been typed in.</param>
    /// <param name="table">The table it stands in; other cells may settle what its comma means.</param>
    public static double? Read(string cell, double low, double high, out CellProblem? problem, Unit? unit = null, IReadOnlyList<Unit>? units = null, Table? table = null)
    {
        problem = null;
        if (NumberText.Read(cell) is not { } reading)
        {
            problem = NotANumber(cell);
            return null;
        }

        bool first = Within(reading.Value, low, high), second = reading.Other is { } other && Within(other, low, high);
        if (first && second && table is { HasDecimalCommas: true }) return reading.Value;
        if (first && second)
            problem = new CellProblem($"'{CellText.Show(cell)}' may be {CellText.Number(reading.Value)} or {CellText.Number(reading.Other!.Value)}", "Write it without thousands mark, or with a decimal point.");
        else if (!first && !second)
            problem = OutOfRange(reading.Value, low, high, unit, units);
        return problem is null ? first ? reading.Value : reading.Other : null;
    }

    private static bool Within(double value, double low, double high) => value >= low * (1 - 1e-12) && value <= high * (1 + 1e-12);

    private static CellProblem OutOfRange(double value, double low, double high, Unit? unit, IReadOnlyList<Unit>? units)
    {
        var symbol = unit is null ? "" : " " + unit.Symbol;
        var range = $"{CellText.Number(value)}{symbol} is outside the allowed {CellText.Limit(low, isLow: true)} to {CellText.Limit(high, isLow: false)}{symbol}";
        foreach (var meant in units ?? [])
        {
            var converted = value * meant.ToSi / unit!.ToSi;
            if (meant == unit || !Within(converted, low, high)) continue;
            return new CellProblem($"{range}; it looks like {meant.Symbol}", $"If it is {meant.Symbol}, write {CellText.Number(converted)} ({CellText.Number(value)} {meant.Symbol} in {unit.Symbol}), or use a column in {meant.Symbol}.");
        }

        foreach (var tenth in (double[])[10, 100, 1000])
            if (unit is not null && value > high && Within(value / tenth, low, high))
                return new CellProblem($"{range}; it looks like a decimal point is missing", $"If it is {CellText.Number(value / tenth)}{symbol}, write that.");
        return new CellProblem(range, "Correct the value, or empty the cell if there is none.");
    }

    private static CellProblem NotANumber(string cell)
    {
        var text = cell.Trim();
        var shown = CellText.Show(text);
        if (text.StartsWith('#')) return new CellProblem($"the spreadsheet could not work out this cell ({shown})", "Mend the formula, or write the number.");
        if (text.TrimStart('+', '-').ToUpperInvariant() is "NAN" or "INF" or "INFINITY" or "∞" or "1.#INF" or "1.#QNAN" || double.TryParse(text, System.Globalization.CultureInfo.InvariantCulture, out var huge) && double.IsInfinity(huge))
            return new CellProblem($"'{shown}' is not a finite number", "Write the number, or leave the cell empty.");
        if (text.Contains('\n', StringComparison.Ordinal) || text.Contains('\r', StringComparison.Ordinal))
            return new CellProblem("the cell holds line breaks: a quote was opened and closed lines later", "Take out the stray quote.");
        if (text.Length > 0 && char.IsAsciiDigit(text[0]) && text.Any(char.IsLetter))
            return new CellProblem($"'{shown}' is not a plain number", "Write the number only; the unit stands in the head.");
        return new CellProblem($"'{shown}' is not a number", "Write a number, or leave the cell empty if there is none.");
    }
}
