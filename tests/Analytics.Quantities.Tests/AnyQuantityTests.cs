using System.Reflection;

namespace Analytics.Quantities.Tests;

public class AnyQuantityTests
{
    private static readonly AnyQuantity s_kilogram = AnyQuantity.From(1, "kg"), s_metre = AnyQuantity.From(1, "m"), s_second = AnyQuantity.From(1, "s"), s_radian = AnyQuantity.From(1, "rad");

    public static TheoryData<string> AllQuantities => QuantityTypes.Names;

    [Theory, MemberData(nameof(AllQuantities))]
    public void Conversion_EveryQuantity_HasTheDimensionOfItsSiSymbol(string name)
    {
        var type = QuantityTypes.All.Single(t => t.Name == name);
        var conversion = typeof(AnyQuantity).GetMethods(BindingFlags.Public | BindingFlags.Static).SingleOrDefault(m => m.Name == "op_Implicit" && m.GetParameters()[0].ParameterType == type);
        Assert.True(conversion is not null, $"Add a conversion from {name} to {nameof(AnyQuantity)}.");

        var any = (AnyQuantity)conversion.Invoke(null, [type.GetMethod("FromSi")!.Invoke(null, [2.5])])!;

        Assert.Equal(2.5, any.Si);
        Assert.Equal(Dimension.Of(type), Dimension.OfUnit(any.Dimension));
        var unit = ((IQuantity)Activator.CreateInstance(type)!).SiUnit;
        Assert.Equal(unit.Split('/')[0] == "rad" ? 1 : 0, any.Dimension.Angle);
        Assert.Equal(2.5, any.In(unit));
    }

    [Fact]
    public void Conversion_Number_IsBare()
    {
        AnyQuantity number = 1.25;

        Assert.True(number.Dimension.IsNone);
        Assert.Equal(1.25, number.In("1"));
        Assert.Equal(125, number.In("%"));
    }

    // 80 kg at 2.5 m/s carry 200 kg·m/s; 12° of trunk over 240 N·s are 0.05 °/(N·s): by hand. Allowed are a few roundings of the last digit.
    [Fact]
    public void Arithmetic_TypedQuantities_CarriesTheirUnits()
    {
        Assert.Equal(200, ((AnyQuantity)Mass.FromKilograms(80) * Speed.FromMetresPerSecond(2.5)).In("kg·m/s"), 1e-12);
        Assert.Equal(0.05, ((AnyQuantity)Angle.FromDegrees(12) / Impulse.FromNewtonSeconds(240)).In("°/(N·s)"), 1e-15);
        Assert.Equal(1.25, ((AnyQuantity)Length.FromMetres(2.5) / Length.FromMetres(2)).In("1"), 1e-15);
        Assert.Equal(3.5, (s_metre * 2 + Length.FromMetres(1.5)).In("m"), 1e-15);
        Assert.Equal(-0.5, (s_metre - Length.FromMetres(1.5)).In("m"), 1e-15);
        Assert.Equal(-100, (-s_metre).In("cm"), 1e-13);
    }

    // Two-thirds law: 180 kg over (100 kg)^0.67; 100^0.67 = 10^1.34 = 21.8776 (R 4.2.2), so 8.22759 to six figures.
    [Fact]
    public void ToPower_BrokenPower_GivesTheScaledScore()
    {
        var score = AnyQuantity.From(180, "kg") / AnyQuantity.From(100, "kg").ToPower(0.67);

        Assert.Equal(8.22759, score.In("kg/kg^0.67"), 1e-5);
        Assert.Equal(8.22759, score.In("kg^0.33"), 1e-5);
        Assert.Equal("kg^0.33", score.Dimension.ToString());
    }

    // Ten steps of a tenth are not 1 to the last bit, yet they are one power of the metre.
    [Fact]
    public void Dimension_PowersThatDoNotMeetToTheLastBit_AreTheSame()
    {
        var sum = Enumerable.Repeat(s_metre.ToPower(0.1), 10).Aggregate((a, b) => a * b);

        Assert.NotEqual(1.0, sum.Dimension.Length);
        Assert.Equal(1, sum.In("m"), 1e-12);
        Assert.Equal("m", sum.Dimension.ToString());
    }

    [Fact]
    public void Angle_IsNoBareNumber()
    {
        var error = Assert.Throws<UnitMismatchException>(() => s_radian.In("1"));

        Assert.Equal("the formula gives a value in rad, which is no number of 1", error.Message);
        Assert.Throws<UnitMismatchException>(() => s_radian + 1);
    }

    [Fact]
    public void Mismatch_SaysWhichDimensionsMet()
    {
        Assert.Equal("a value in s cannot be added to a value in m", Assert.Throws<UnitMismatchException>(() => s_metre + s_second).Message);
        Assert.Equal("a bare number cannot be taken from a value in kg", Assert.Throws<UnitMismatchException>(() => s_kilogram - 1).Message);
        Assert.Equal("the formula gives a value in kg·m/s, which is no number of m/s", Assert.Throws<UnitMismatchException>(() => (s_kilogram * s_metre / s_second).In("m/s")).Message);
        Assert.Equal("the formula gives a bare number, which is no number of kg", Assert.Throws<UnitMismatchException>(() => ((AnyQuantity)3).In("kg")).Message);
    }

    [Fact]
    public void Mismatch_IsFoundForNoNumbersToo()
        => Assert.Throws<UnitMismatchException>(() => AnyQuantity.From(double.NaN, "m").In("s"));

    // What cannot be worked out is for the reader of the number to see, unlike in the typed quantities.
    [Fact]
    public void DivisionByZero_IsInfinite()
    {
        Assert.Equal(double.PositiveInfinity, (s_metre / AnyQuantity.From(0, "s")).In("m/s"));
        Assert.True(double.IsNaN((-s_metre).ToPower(0.5).In("m^0.5")));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void ToPower_NotFinite_IsRefused(double power)
        => Assert.Contains("a power must be a finite number", Assert.Throws<ArgumentOutOfRangeException>(() => s_metre.ToPower(power)).Message, StringComparison.Ordinal);

    [Fact]
    public void Text_IsNumberAndCoherentUnit()
    {
        Assert.Equal("1", Quantities.Dimension.None.ToString());
        Assert.Equal("1/s", (1 / s_second).Dimension.ToString());
        Assert.Equal("rad·s/(kg·m)", (s_radian * s_second / (s_kilogram * s_metre)).Dimension.ToString());
        Assert.Equal("kg·m²/s³", (s_kilogram * s_metre.ToPower(2) / s_second.ToPower(3)).Dimension.ToString());
        Assert.Equal("1/(m·s)", (1 / (s_metre * s_second)).Dimension.ToString());
        Assert.Equal("2.5 m/s", AnyQuantity.From(2.5, "m/s").ToString());
    }

    [Fact]
    public void Unit_Null_IsRefused()
    {
        Assert.Throws<ArgumentNullException>(() => AnyQuantity.From(1, (UnitExpression)null!));
        Assert.Throws<ArgumentNullException>(() => s_metre.In((UnitExpression)null!));
        Assert.Throws<ArgumentNullException>(() => s_metre.In((string)null!));
    }
}
