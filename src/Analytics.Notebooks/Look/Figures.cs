using System.Globalization;
using Analytics.Statistics;

namespace Analytics.Notebooks.Look;

/// <summary>Numbers as report text: fixed decimals, a real minus sign, a thin space before the unit, no culture.</summary>
public static class Figures
{
    /// <summary>The minus sign, U+2212.</summary>
    public const string Minus = "\u2212";

    /// <summary>The thin space that stands before a unit, U+2009.</summary>
    public const string ThinSpace = "\u2009";

    /// <summary>What is shown where there is no number: an en dash.</summary>
    public const string Missing = "\u2013";

    /// <summary>A number with its unit: <c>182 kg</c>.</summary>
    /// <param name="value">The number; null, NaN and infinity show as <see cref="Missing"/>.</param>
    /// <param name="decimals">Decimals shown, 0 to 9.</param>
    /// <param name="unit">Unit symbol; empty for none.</param>
    public static string Plain(double? value, int decimals, string unit = "")
        => value is { } number && double.IsFinite(number) ? Digits(number, decimals, plus: false) + Unit(unit) : Missing;

    /// <summary>A change with its sign and unit: <c>+18 kg</c>. A change that rounds to nothing has no sign.</summary>
    /// <param name="value">The number; null, NaN and infinity show as <see cref="Missing"/>.</param>
    /// <param name="decimals">Decimals shown, 0 to 9.</param>
    /// <param name="unit">Unit symbol; empty for none.</param>
    public static string Signed(double? value, int decimals, string unit = "")
        => value is { } number && double.IsFinite(number) ? Digits(number, decimals, plus: true) + Unit(unit) : Missing;

    /// <summary>The two limits in brackets: <c>(9 to 27)</c>; empty text when a limit is not known.</summary>
    /// <param name="low">Lower limit.</param>
    /// <param name="high">Upper limit.</param>
    /// <param name="decimals">Decimals shown, 0 to 9.</param>
    /// <param name="signed">Whether the limits carry a plus sign, as limits of a change do.</param>
    public static string Limits(double? low, double? high, int decimals, bool signed = false)
        => low is { } l && high is { } h && double.IsFinite(l) && double.IsFinite(h)
            ? $"({Digits(l, decimals, signed)} to {Digits(h, decimals, signed)})"
            : string.Empty;

    /// <summary>A number with its interval: <c>182 kg (176 to 188)</c>; the number alone when no interval is known.</summary>
    /// <param name="value">The estimate.</param>
    /// <param name="interval">Its interval, in the same unit; null when no error is known.</param>
    /// <param name="decimals">Decimals shown, 0 to 9, for all three numbers.</param>
    /// <param name="unit">Unit symbol; empty for none.</param>
    public static string Interval(double? value, Interval? interval, int decimals, string unit = "")
        => Join(Plain(value, decimals, unit), Limits(interval?.Low, interval?.High, decimals));

    /// <summary>A change with its interval: <c>+18 kg (+9 to +27)</c>; the change alone when no interval is known.</summary>
    /// <param name="value">The change.</param>
    /// <param name="interval">Its interval, in the same unit; null when no error is known.</param>
    /// <param name="decimals">Decimals shown, 0 to 9, for all three numbers.</param>
    /// <param name="unit">Unit symbol; empty for none.</param>
    public static string SignedInterval(double? value, Interval? interval, int decimals, string unit = "")
        => Join(Signed(value, decimals, unit), Limits(interval?.Low, interval?.High, decimals, signed: true));

    /// <summary>A share as whole percent: <c>93 %</c>.</summary>
    /// <param name="share">A share between 0 and 1; null and NaN show as <see cref="Missing"/>.</param>
    public static string Percent(double? share) => Plain(share * 100, 0, "%");

    internal static string Unit(string unit)
        => unit.Length == 0 ? string.Empty : ThinSpace + unit;

    private static string Join(string number, string limits) => limits.Length == 0 ? number : number + " " + limits;

    private static string Digits(double value, int decimals, bool plus)
    {
        if (decimals is < 0 or > 9)
            throw new ArgumentOutOfRangeException(nameof(decimals), decimals, "Decimals must lie between 0 and 9.");
        // Above the range of exact integers the fixed form would print digits that mean nothing.
        var format = Math.Abs(value) >= 1e15 ? "0.###e+0" : "F" + decimals.ToString(CultureInfo.InvariantCulture);
        var digits = Math.Abs(value).ToString(format, CultureInfo.InvariantCulture);
        var isZero = !digits.Any(c => c is >= '1' and <= '9');
        return (isZero ? string.Empty : value < 0 ? Minus : plus ? "+" : string.Empty) + digits;
    }
}
