using System.Globalization;

namespace Analytics.Statistics.Results;

/// <summary>Numbers for people: four significant digits at least, whole numbers whole, a real minus sign, no culture.</summary>
internal static class SheetNumber
{
    private const string Missing = "\u2013";

    public static string Of(double? value)
    {
        if (value is not { } v || double.IsNaN(v)) return Missing;
        if (double.IsInfinity(v)) return v > 0 ? "\u221e" : "\u2212\u221e";
        return Digits(v).Replace('-', '\u2212');
    }

    private static string Digits(double v)
    {
        var size = Math.Abs(v);
        if (size is not 0 and (< 1e-4 or >= 1e9)) return v.ToString("0.###E+0", CultureInfo.InvariantCulture);
        if (v == Math.Round(v)) return v.ToString("0", CultureInfo.InvariantCulture);
        var decimals = Math.Clamp(3 - (int)Math.Floor(Math.Log10(size)), 0, 7);
        return v.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
