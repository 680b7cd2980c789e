using System.Globalization;

namespace Analytics.Quantities.Tests;

/// <summary>A culture that writes numbers as de-DE does; made by hand because the build carries no culture data.</summary>
internal static class DecimalComma
{
    public static CultureInfo Culture { get; } = Make();

    private static CultureInfo Make()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        return culture;
    }
}
