using System.Globalization;

namespace Analytics.Season.Cells;

/// <summary>A number as a cell may hold it.</summary>
/// <param name="Value">The first reading.</param>
/// <param name="Other">A second possible reading, when a comma may be a decimal comma or a thousands mark; else null.</param>
internal readonly record struct NumberReading(double Value, double? Other = null);

/// <summary>Reads numbers the way spreadsheets write them.</summary>
internal static class NumberText
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite;

    /// <summary>Reads a number; null when the cell is not one. Never NaN or infinite.</summary>
    /// <param name="cell">The cell.</param>
    public static NumberReading? Read(string cell)
    {
        if (double.TryParse(cell, Plain, CultureInfo.InvariantCulture, out var value)) return double.IsFinite(value) ? new NumberReading(value) : null;
        var text = cell.Trim();
        if (!HasOnlyNumberCharacters(text)) return null;
        var ungrouped = Ungroup(text, ' ', '\u00a0', '\u202f', '\'', '\u2019');
        if (ungrouped is null) return null;
        int comma = ungrouped.LastIndexOf(','), point = ungrouped.LastIndexOf('.');
        if (comma < 0) return Parse(ungrouped) is { } spaced ? new NumberReading(spaced) : null;
        if (point > comma) return ParseGrouped(ungrouped, ',');
        if (point >= 0) return ParseGrouped(ungrouped, '.') is { } ? Parse(Ungroup(ungrouped[..comma], '.') + "." + ungrouped[(comma + 1)..]) is { } german ? new NumberReading(german) : null : null;
        return Commas(ungrouped);
    }

    /// <summary>What a cell tells about the commas of its table: true when its comma can only be a decimal comma (<c>0,5</c>, <c>1043,22</c>), false when it can only group thousands; null when it tells nothing.</summary>
    /// <param name="cell">The cell.</param>
    public static bool? HasDecimalComma(string cell)
    {
        if (!cell.Contains(',', StringComparison.Ordinal) || Read(cell) is not { Other: null } reading) return null;
        var text = cell.Trim();
        int comma = text.LastIndexOf(','), point = text.LastIndexOf('.');
        if (point > comma || text.IndexOf(',', StringComparison.Ordinal) != comma) return false;
        return Parse(Ungroup(text[..comma], '.', ' ', '\'', '\u2019', '\u00a0', '\u202f') + "." + text[(comma + 1)..]) == reading.Value ? true : null;
    }

    /// <summary>Commas only: one is a decimal comma unless it could group thousands; several can only group.</summary>
    private static NumberReading? Commas(string text)
    {
        var grouped = Ungroup(text, ',') is { } digits ? Parse(digits) : null;
        if (text.IndexOf(',', StringComparison.Ordinal) != text.LastIndexOf(',')) return grouped is { } many ? new NumberReading(many) : null;
        var point = Parse(text.Replace(',', '.'));
        if (point is null) return null;
        // "0,985" cannot be grouped: a leading zero is no thousand.
        return grouped is null || text.TrimStart('-', '+').StartsWith('0') ? new NumberReading(point.Value) : new NumberReading(point.Value, grouped);
    }

    private static NumberReading? ParseGrouped(string text, char mark)
    {
        var decimalMark = mark is ',' ? '.' : ',';
        var end = text.IndexOf(decimalMark, StringComparison.Ordinal);
        var whole = Ungroup(text[..end], mark);
        return whole is not null && Parse(whole + "." + text[(end + 1)..]) is { } value ? new NumberReading(value) : null;
    }

    /// <summary>Takes thousands marks out; null when they do not stand between groups of three digits.</summary>
    private static string? Ungroup(string text, params ReadOnlySpan<char> marks)
    {
        if (text.AsSpan().IndexOfAny(marks) < 0) return text;
        var end = text.AsSpan().IndexOfAny(".,eE");
        var whole = marks.Contains(',') || marks.Contains('.') || end < 0 ? text : text[..end];
        var groups = whole.Split(marks.ToArray());
        var first = groups[0].TrimStart('-', '+');
        if (first.Length is 0 or > 3 || groups.Skip(1).Any(g => g.Length != 3 || !g.All(char.IsAsciiDigit))) return null;
        return string.Concat(groups) + text[whole.Length..];
    }

    private static double? Parse(string text) => double.TryParse(text, Plain, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value) ? value : null;

    private static bool HasOnlyNumberCharacters(string text) => text.Length is > 0 and < 40 && text.All(c => char.IsAsciiDigit(c) || "+-.,eE '\u00a0\u202f\u2019".Contains(c, StringComparison.Ordinal));
}
