using System.Globalization;

namespace Analytics.Statistics;

/// <summary>Checks of arguments; every message says what, the value, the allowed range.</summary>
internal static class Require
{
    // Variances are squared once more for degrees of freedom: beyond these sizes that leaves the range of a double, and 0/0 or ∞/∞ follows.
    private const double Largest = 1e70, Smallest = 1e-70;

    public static double Finite(double value, string name)
        => Math.Abs(value) <= Largest ? value : throw Bad(name, value, double.IsFinite(value) ? FormattableString.Invariant($"up to {Largest} in size") : "a finite number");

    public static double Positive(double value, string name)
        => value is >= Smallest and <= Largest ? value : throw Bad(name, value, value > 0 && double.IsFinite(value) ? FormattableString.Invariant($"{Smallest} to {Largest}") : "above 0 and finite");

    public static double NotNegative(double value, string name)
        => value is 0 or (>= Smallest and <= Largest) ? value : throw Bad(name, value, value > 0 && double.IsFinite(value) ? FormattableString.Invariant($"0, or {Smallest} to {Largest}") : "0 or more and finite");

    /// <summary>An argument of a law or a factor, which may be of any size.</summary>
    public static double AnyPositive(double value, string name)
        => double.IsFinite(value) && value > 0 ? value : throw Bad(name, value, "above 0 and finite");

    /// <summary>An argument of a law or a factor, which may be of any size.</summary>
    public static double AnyNotNegative(double value, string name)
        => double.IsFinite(value) && value >= 0 ? value : throw Bad(name, value, "0 or more and finite");

    /// <summary>Not NaN; infinities are allowed.</summary>
    public static double Number(double value, string name)
        => double.IsNaN(value) ? throw Bad(name, value, "a number, infinities included") : value;

    public static double Within(double value, double low, double high, string name)
        => value >= low && value <= high ? value : throw Bad(name, value, FormattableString.Invariant($"{low} to {high}"));

    /// <summary>Finite and above a bound.</summary>
    public static double Above(double value, double bound, string name)
        => double.IsFinite(value) && value > bound ? value : throw Bad(name, value, FormattableString.Invariant($"above {bound} and finite"));

    /// <summary>Strictly between 0 and 1.</summary>
    public static double Share(double value, string name)
        => value > 0 && value < 1 ? value : throw Bad(name, value, "above 0 and below 1");

    /// <summary>Degrees of freedom: above 0, infinity for an error that is known.</summary>
    public static double DegreesOfFreedom(double value, string name)
        => value > 0 ? value : throw Bad(name, value, "above 0 (infinity when the error is known)");

    public static int AtLeast(int value, int minimum, string name)
        => value >= minimum ? value : throw Bad(name, value, FormattableString.Invariant($"{minimum} or more"));

    /// <summary>At least <paramref name="minimum"/> values, all finite.</summary>
    public static void Sample(IReadOnlyList<double> values, int minimum, string name)
    {
        ArgumentNullException.ThrowIfNull(values, name);
        if (values.Count < minimum)
        {
            throw new ArgumentException(
                FormattableString.Invariant($"{name} holds {values.Count} values; at least {minimum} are needed."), name);
        }

        for (var i = 0; i < values.Count; i++)
        {
            if (!double.IsFinite(values[i]))
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"{name}[{i}] is {values[i]}; every value must be a finite number. Leave a missing value out."), name);
            }

            NotTooLarge(values[i], $"{name}[{i}]", name);
        }
    }

    /// <summary>Small enough to be squared and summed; what it is goes into the message.</summary>
    public static void NotTooLarge(double value, string what, string name)
    {
        if (Math.Abs(value) > Largest)
            throw new ArgumentException(FormattableString.Invariant($"{what} is {value}; allowed: up to {Largest} in size. Use a larger unit."), name);
    }

    /// <summary>Two lists that go together.</summary>
    public static void SameLength(IReadOnlyList<double> first, IReadOnlyList<double> second, string name)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second, name);
        if (first.Count != second.Count)
            throw new ArgumentException(FormattableString.Invariant($"{name} holds {second.Count} values beside {first.Count}; one each is needed, in the same order."), name);
    }

    private static ArgumentOutOfRangeException Bad(string name, double value, string allowed)
        => new(name, value, string.Create(CultureInfo.InvariantCulture, $"{name} is {value}; allowed: {allowed}."));
}
