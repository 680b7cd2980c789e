using System.Globalization;

namespace Analytics.Quantities;

/// <summary>
/// A quantity of any dimension, for formulas whose result has no type of its own, such as degrees per newton second. The dimension is carried along and
/// checked when values are added and when a number is taken out in a unit.
/// </summary>
/// <remarks>
/// Unlike the typed quantities it takes what arithmetic gives: a division by 0 is infinite, and it is for whoever takes the number out to look.
/// </remarks>
/// <example>
/// <code>
/// AnyQuantity stiffness = (AnyQuantity)trunkChange / impulse;
/// double number = stiffness.In("°/(N·s)");
/// </code>
/// </example>
public readonly partial record struct AnyQuantity
{
    private AnyQuantity(double si, Dimension dimension) => (Si, Dimension) = (si, dimension);

    /// <summary>Magnitude in the coherent SI unit of the dimension; may be infinite or not a number.</summary>
    public double Si { get; }

    /// <summary>The dimension.</summary>
    public Dimension Dimension { get; }

    /// <summary>A number of a unit.</summary>
    /// <param name="number">The number.</param>
    /// <param name="unit">The unit, see <see cref="UnitExpression"/>.</param>
    /// <exception cref="FormatException">The unit cannot be read.</exception>
    public static AnyQuantity From(double number, string unit) => From(number, UnitExpression.Parse(unit));

    /// <summary>A number of a unit.</summary>
    /// <param name="number">The number.</param>
    /// <param name="unit">The unit.</param>
    public static AnyQuantity From(double number, UnitExpression unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return new(unit.SiOf(number), unit.Dimension);
    }

    /// <summary>The number of a unit.</summary>
    /// <param name="unit">The unit, see <see cref="UnitExpression"/>.</param>
    /// <exception cref="FormatException">The unit cannot be read.</exception>
    /// <exception cref="UnitMismatchException">The unit is of another dimension.</exception>
    public double In(string unit) => In(UnitExpression.Parse(unit));

    /// <summary>The number of a unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <exception cref="UnitMismatchException">The unit is of another dimension.</exception>
    public double In(UnitExpression unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return Dimension.IsSameAs(unit.Dimension) ? unit.NumberOf(Si)
            : throw new UnitMismatchException($"the formula gives {Named(Dimension)}, which is no number of {unit.Text}");
    }

    /// <summary>The size, without its sign.</summary>
    public AnyQuantity Abs() => new(Math.Abs(Si), Dimension);

    /// <summary>Power.</summary>
    /// <param name="power">Any finite power.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not finite.</exception>
    public AnyQuantity ToPower(double power)
        => double.IsFinite(power) ? new(Math.Pow(Si, power), Dimension.ToPower(power)) : throw Guard.Out(nameof(power), power, "a power must be a finite number");

    /// <summary>Sum.</summary>
    /// <exception cref="UnitMismatchException">The dimensions differ.</exception>
    public static AnyQuantity operator +(AnyQuantity left, AnyQuantity right) => new(left.Si + right.Si, Same(left, right, "added to"));

    /// <summary>Difference.</summary>
    /// <exception cref="UnitMismatchException">The dimensions differ.</exception>
    public static AnyQuantity operator -(AnyQuantity left, AnyQuantity right) => new(left.Si - right.Si, Same(left, right, "taken from"));

    /// <summary>Opposite.</summary>
    public static AnyQuantity operator -(AnyQuantity value) => new(-value.Si, value.Dimension);

    /// <summary>Product.</summary>
    public static AnyQuantity operator *(AnyQuantity left, AnyQuantity right) => new(left.Si * right.Si, left.Dimension * right.Dimension);

    /// <summary>Ratio.</summary>
    public static AnyQuantity operator /(AnyQuantity left, AnyQuantity right) => new(left.Si / right.Si, left.Dimension / right.Dimension);

    /// <summary>Number and coherent SI unit, invariant culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Si:G7} {Dimension}");

    private static Dimension Same(AnyQuantity left, AnyQuantity right, string how) => left.Dimension.IsSameAs(right.Dimension) ? left.Dimension
        : throw new UnitMismatchException($"{Named(right.Dimension)} cannot be {how} {Named(left.Dimension)}");

    private static string Named(Dimension dimension) => dimension.IsNone ? "a bare number" : $"a value in {dimension}";
}
