using System.Globalization;
using System.Runtime.CompilerServices;
using Analytics.Quantities;

namespace Analytics.Metrics;

/// <summary>Range checks on quantities that name the value and what is allowed.</summary>
internal static class Require
{
    public static T Positive<T>(T value, string what, [CallerArgumentExpression(nameof(value))] string name = "") where T : struct, IQuantity<T>
        => value.Si > 0 ? value : throw Out(name, value, $"{what} must be above 0 {value.SiUnit}");

    public static T NotNegative<T>(T value, string what, [CallerArgumentExpression(nameof(value))] string name = "") where T : struct, IQuantity<T>
        => value.Si >= 0 ? value : throw Out(name, value, $"{what} must be 0 {value.SiUnit} or more");

    private static ArgumentOutOfRangeException Out<T>(string name, T value, string message) where T : struct, IQuantity<T>
        => new(name, value, string.Create(CultureInfo.InvariantCulture, $"{message}; got {value}."));
}
