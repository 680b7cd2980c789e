using System.Globalization;

namespace Analytics.Season.Cells;

/// <summary>Reads dates: ISO 8601 calendar dates, and day counts of a workbook.</summary>
internal static class DateText
{
    private static readonly string[] Forms = ["yyyy-MM-dd", "yyyy-MM-ddTHH:mm:ss", "yyyy-MM-dd HH:mm:ss"];

    /// <summary>The date; null when the cell is not one.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="serial">Whether a number counts days, as in a workbook (ECMA-376 part 1, 18.17.4.1, 1900 system).</param>
    public static DateOnly? Read(string cell, bool serial = false)
    {
        var text = cell.Trim();
        if (DateTime.TryParseExact(text, Forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) return DateOnly.FromDateTime(date);
        // 61 is 1 March 1900; below it the count has the well-known false leap day.
        if (serial && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var days) && days is >= 61 and < 2958466)
            return DateOnly.FromDateTime(DateTime.FromOADate(days));
        return null;
    }

    /// <summary>ISO text of a date.</summary>
    public static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
