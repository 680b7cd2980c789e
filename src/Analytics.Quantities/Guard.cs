using System.Globalization;
using System.Runtime.CompilerServices;

namespace Analytics.Quantities;

/// <summary>Range checks that name the value and what is allowed.</summary>
internal static class Guard
{
    public static double Finite(double value, string what, string unit, [CallerArgumentExpression(nameof(value))] string name = "")
        => double.IsFinite(value) ? value : throw Out(name, value, $"{what} must be a finite number of {unit}");

    public static double NotNegative(double value, string what, string unit, [CallerArgumentExpression(nameof(value))] string name = "")
        => double.IsFinite(value) && value >= 0 ? value : throw Out(name, value, $"{what} must be a finite number of {unit}, 0 or more");

    private static ArgumentOutOfRangeException Out(string name, double value, string message)
        => new(name, value, string.Create(CultureInfo.InvariantCulture, $"{message}; got {value}."));
}
