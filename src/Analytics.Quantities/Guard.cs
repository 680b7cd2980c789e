using System.Globalization;
using System.Runtime.CompilerServices;

namespace Analytics.Quantities;

/// <summary>Range checks that name the parameter, the number given and what is allowed.</summary>
internal static class Guard
{
    /// <summary>The SI magnitude of a number of a unit; refused when either is not finite.</summary>
    public static double Finite(double number, Unit unit, string what, [CallerArgumentExpression(nameof(number))] string name = "")
        => double.IsFinite(unit.SiOf(number)) ? WithoutNegativeZero(unit.SiOf(number)) : throw Out(name, number, $"{what} must be a finite number of {unit.Symbol}");

    /// <summary>The SI magnitude of a number of a unit; refused when either is not finite or it is negative.</summary>
    public static double NotNegative(double number, Unit unit, string what, [CallerArgumentExpression(nameof(number))] string name = "")
        => number >= 0 && double.IsFinite(unit.SiOf(number)) ? WithoutNegativeZero(unit.SiOf(number)) : throw Out(name, number, $"{what} must be a finite number of {unit.Symbol}, 0 or more");

    /// <summary>A ratio of two magnitudes of the same kind; refused when the divisor is 0 or too small for a finite result.</summary>
    public static double Ratio(double left, double right, string what)
        => double.IsFinite(left / right) ? left / right : throw Out(nameof(right), right, $"a ratio of two values of {what} needs a divisor other than 0");

    public static ArgumentOutOfRangeException Out(string name, double value, string message)
        => new(name, value, string.Create(CultureInfo.InvariantCulture, $"{message}; got {value}."));

    // A negative zero would print as "-0".
    private static double WithoutNegativeZero(double value) => value + 0.0;
}
