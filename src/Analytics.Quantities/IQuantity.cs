using System.Numerics;

namespace Analytics.Quantities;

/// <summary>A physical quantity held as one finite double in its SI unit.</summary>
public interface IQuantity
{
    /// <summary>The magnitude in the coherent SI unit named by <see cref="SiUnit"/>.</summary>
    double Si { get; }

    /// <summary>Symbol of the SI unit, for example <c>kg</c> or <c>m/s</c>.</summary>
    string SiUnit { get; }
}

/// <summary>What every quantity offers: a validating factory, arithmetic with its own kind, order, and text with its unit.</summary>
/// <remarks>
/// A quantity is one double: 8 bytes, zero by default. It is never NaN or infinite; a result that would be is refused with an
/// <see cref="ArgumentOutOfRangeException"/>. There is no conversion to or from double but by a unit. Text is a number and a
/// unit, in the invariant culture unless another is asked for; a format is a unit symbol, then an optional number format
/// after a bar: <c>"lb|0.0"</c>.
/// </remarks>
/// <typeparam name="TSelf">The quantity itself.</typeparam>
public interface IQuantity<TSelf> : IQuantity, IComparable<TSelf>, IEquatable<TSelf>, IFormattable,
    IComparisonOperators<TSelf, TSelf, bool>,
    IAdditionOperators<TSelf, TSelf, TSelf>, ISubtractionOperators<TSelf, TSelf, TSelf>,
    IMultiplyOperators<TSelf, double, TSelf>, IDivisionOperators<TSelf, double, TSelf>
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>Makes a quantity from its SI magnitude.</summary>
    /// <param name="si">A finite magnitude, within the quantity's range.</param>
    /// <exception cref="ArgumentOutOfRangeException">NaN, infinite, or outside the quantity's range.</exception>
    static abstract TSelf FromSi(double si);

    /// <summary>The zero of this quantity; also its <c>default</c>.</summary>
    static abstract TSelf Zero { get; }

    /// <summary>The units this quantity can be read in and written as, SI unit first.</summary>
    static abstract IReadOnlyList<Unit> Units { get; }
}
