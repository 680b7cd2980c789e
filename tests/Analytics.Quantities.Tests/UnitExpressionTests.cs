using UN = UnitsNet;

namespace Analytics.Quantities.Tests;

/// <summary>Units written out of others: size against UnitsNet, an independent general-purpose unit package, and against the SI Brochure.</summary>
public class UnitExpressionTests
{
    // That package rounds some factors to about 13 digits.
    private const double Tolerance = 1e-11;

    public static TheoryData<string, double> Compound { get; } = new()
    {
        { "N/cm", UN.ForcePerLength.FromNewtonsPerCentimeter(1).NewtonsPerMeter },
        // That package rounds the next two to 8 digits, so they are worked by hand: 0.45359237 kg over 0.3048 m, and times its square.
        { "lb/ft", 1.4881639435695538 },
        { "g/cm^3", UN.Density.FromGramsPerCubicCentimeter(1).KilogramsPerCubicMeter },
        { "lbf/in²", UN.Pressure.FromPoundsForcePerSquareInch(1).Pascals },
        { "kg·m²", UN.MassMomentOfInertia.FromKilogramSquareMeters(1).KilogramSquareMeters },
        { "lb*ft^2", 0.0421401100938048 },
        { "°/s", UN.RotationalSpeed.FromDegreesPerSecond(1).RadiansPerSecond },
        { "deg/s²", UN.RotationalAcceleration.FromDegreesPerSecondSquared(1).RadiansPerSecondSquared },
        { "kN/s", 1000 * UN.ForceChangeRate.FromNewtonsPerSecond(1).NewtonsPerSecond },
        { "ft·lbf", UN.Torque.FromPoundForceFeet(1).NewtonMeters },
        { "lbf·s", UN.Impulse.FromPoundForceSeconds(1).NewtonSeconds },
        { "yd²", UN.Area.FromSquareYards(1).SquareMeters },
        { "in³", UN.Volume.FromCubicInches(1).CubicMeters },
    };

    [Theory, MemberData(nameof(Compound))]
    public void Parse_UnitsOfOthers_HaveTheSizeOfAnIndependentPackage(string unit, double si)
        => Assert.Equal(1, UnitExpression.Parse(unit).ToSi / si, Tolerance);

    // SI Brochure, 9th edition: table 4 (units with names of their own in base units), table 8 (minute, hour, degree), section 5.4.7 (percent is 0.01). Allowed is the last digit.
    [Theory]
    [InlineData("N", "kg·m/s²", 1)]
    [InlineData("J", "kg·m²/s²", 1)]
    [InlineData("W", "kg·m²/s³", 1)]
    [InlineData("Hz", "1/s", 1)]
    [InlineData("kgf", "kg·m/s^2", 9.80665)]
    [InlineData("min", "s", 60)]
    [InlineData("h", "s", 3600)]
    [InlineData("°", "rad", 0.017453292519943295)]
    [InlineData("%", "1", 0.01)]
    [InlineData("g", "kg", 0.001)]
    [InlineData("g₀", "m/s²", 9.80665)]
    [InlineData("N·s", "kg·m/s", 1)]
    [InlineData("W/kg", "m²/s³", 1)]
    [InlineData("J/s", "W", 1)]
    [InlineData("1/min", "Hz", 0.016666666666666666)]
    public void Parse_OneUnitInAnother_IsThatOfTheBrochure(string unit, string other, double number)
    {
        var (one, two) = (UnitExpression.Parse(unit), UnitExpression.Parse(other));
        Assert.True(one.Dimension.IsSameAs(two.Dimension), $"{one.Dimension} is not {two.Dimension}");
        Assert.Equal(number, AnyQuantity.From(1, unit).In(other), 1e-15 * number);
    }

    // The gram and the acceleration of gravity differ by a subscript only; taken for each other they must clash.
    [Fact]
    public void Parse_GramAndGravity_AreOfTwoDimensions()
    {
        Assert.Equal("kg", UnitExpression.Parse("g").Dimension.ToString());
        Assert.Equal("m/s²", UnitExpression.Parse("g₀").Dimension.ToString());
        Assert.Throws<UnitMismatchException>(() => AnyQuantity.From(2, "g₀").In("g"));
    }

    [Theory]
    [InlineData("kg·m/s", "kg·m/s")]
    [InlineData("°/(N·s)", "rad/(N·s)")]
    [InlineData("kg/kg^0.67", "kg^0.33")]
    [InlineData("m^-1", "1/m")]
    [InlineData("m/s/s", "m·s^-2")]
    [InlineData("m/(s·s)", "m/s²")]
    [InlineData("m/s·s", "m")]
    [InlineData("(m/s)²", "m²/s²")]
    [InlineData("((kg))", "kg")]
    [InlineData("kg^0", "1")]
    [InlineData("m^.5", "m^0.5")]
    [InlineData("kg/kg", "%")]
    public void Parse_PowersAndParentheses_GiveTheDimension(string unit, string same)
        => Assert.True(UnitExpression.Parse(unit).Dimension.IsSameAs(UnitExpression.Parse(same).Dimension), $"{unit} has dimension {UnitExpression.Parse(unit).Dimension}");

    [Theory]
    [InlineData(" kg · m / s ")]
    [InlineData("kg\u00A0·\u00A0m/s")]
    [InlineData("( kg ) · ( m ) / s")]
    [InlineData("kg · m ^ 1 / s")]
    [InlineData("kg * m / ( s )")]
    public void Parse_Spaces_DoNotMatter(string unit)
    {
        var read = UnitExpression.Parse(unit);
        Assert.Equal((1.0, "kg·m/s", unit), (read.ToSi, read.Dimension.ToString(), read.Text));
    }

    // 0.45359237^0.67 = 0.588797620434 (R 4.2.2).
    [Fact]
    public void Parse_BrokenPower_ScalesTheSizeToo() => Assert.Equal(0.588797620434, UnitExpression.Parse("lb^0.67").ToSi, 1e-9);

    [Fact]
    public void Symbols_OfEveryQuantity_CanBeReadWithTheirSize()
        => Assert.All(QuantityTypes.All, type => Assert.All((IReadOnlyList<Unit>)type.GetProperty("Units")!.GetValue(null)!, unit =>
        {
            var read = UnitExpression.Parse(unit.Symbol);
            // A unit made of parts multiplies its factors in another order: the last digit may differ.
            Assert.Equal(1, read.ToSi / unit.ToSi, 1e-15);
            Assert.Equal(Dimension.Of(type), Dimension.OfUnit(read.Dimension));
        }));

    // Decimal parts of a unit are divided by, so the number nearest to the decimal comes out: 0.57, not 0.5700000000000001.
    [Theory]
    [InlineData("cm", 57, 0.57)]
    [InlineData("%", 7, 0.07)]
    [InlineData("ms", 1623, 1.623)]
    public void From_DecimalParts_GiveTheNearestDouble(string unit, double number, double si)
    {
        Assert.Equal(si, AnyQuantity.From(number, unit).Si);
        Assert.Equal(number, AnyQuantity.From(number, unit).In(unit), 1e-15 * number);
    }
}
