using FsCheck;
using FsCheck.Xunit;

namespace Analytics.Quantities.Tests;

/// <summary>Properties over many generated numbers and units; the seed is fixed.</summary>
[Properties(MaxTest = 500, Replay = "20261126,1")]
public class AnyQuantityPropertyTests
{
    // Units are multiplied and divided by on the way in and out, powers up to 3 included: some ten roundings of 1.1e-16 each, allowed ten times that.
    private const double Roundings = 1e-14;

    private static readonly string[] s_symbols = [.. QuantityTypes.All.SelectMany(t => ((IReadOnlyList<Unit>)t.GetProperty("Units")!.GetValue(null)!).Select(u => u.Symbol)).Distinct()];

    [Property]
    public void From_AnyUnit_ComesBack(NormalFloat number, byte a, byte b, sbyte power)
    {
        var unit = $"({Symbol(a)})/({Symbol(b)})^{power % 4}";

        Assert.Equal(number.Get, AnyQuantity.From(number.Get, unit).In(unit), Roundings * Math.Abs(number.Get));
    }

    // The unit that a dimension is written as is read as that dimension, of size 1.
    [Property]
    public void Text_OfAnyDimension_IsReadBack(sbyte mass, sbyte length, sbyte time, sbyte angle)
    {
        var dimension = new Quantities.Dimension(mass / 8.0, length % 4, time / 4.0, angle % 3);
        var read = UnitExpression.Parse(dimension.ToString());

        Assert.True(dimension.IsSameAs(read.Dimension), $"{dimension} was read as {read.Dimension}");
        Assert.Equal(1, read.ToSi);
    }

    [Property]
    public void Product_AndRatio_UndoEachOther(NormalFloat one, NormalFloat other, byte a, byte b)
    {
        var (x, y) = (AnyQuantity.From(one.Get, Symbol(a)), AnyQuantity.From(1 + Math.Abs(other.Get), Symbol(b)));

        Assert.Equal(one.Get, (x * y / y).In(Symbol(a)), Roundings * Math.Abs(one.Get));
        Assert.True((x * y).Dimension.IsSameAs((y * x).Dimension));
        Assert.True((x / y).Dimension.IsSameAs((y / x).Dimension.ToPower(-1)));
    }

    [Property]
    public void Power_OfAPower_IsTheProduct(byte a, sbyte p, sbyte q)
    {
        var dimension = UnitExpression.Parse(Symbol(a)).Dimension;

        Assert.True(dimension.ToPower(p / 10.0).ToPower(q / 10.0).IsSameAs(dimension.ToPower(p * q / 100.0)));
    }

    [Property]
    public void Sum_NeedsTheSameDimension(byte a, byte b)
    {
        var (x, y) = (AnyQuantity.From(1, Symbol(a)), AnyQuantity.From(2, Symbol(b)));
        if (x.Dimension.IsSameAs(y.Dimension)) Assert.Equal(x.Si + y.Si, (y + x).Si);
        else Assert.Throws<UnitMismatchException>(() => x + y);
    }

    // A reader never fails otherwise than in words, whatever it is given.
    [Property]
    public void Parse_AnyText_IsReadOrRefusedInWords(NonNull<string> text)
    {
        try
        {
            Assert.InRange(UnitExpression.Parse(text.Get).ToSi, double.Epsilon, double.MaxValue);
        }
        catch (FormatException e)
        {
            Assert.StartsWith("The unit '", e.Message, StringComparison.Ordinal);
        }
    }

    private static string Symbol(byte at) => s_symbols[at % s_symbols.Length];
}
