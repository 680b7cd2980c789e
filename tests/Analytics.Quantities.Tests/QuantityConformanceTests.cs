using System.Globalization;

namespace Analytics.Quantities.Tests;

/// <summary>One suite for all quantities.</summary>
public sealed class QuantityConformanceTests : IDisposable
{
    private readonly CultureInfo _before = CultureInfo.CurrentCulture;

    // Text made with the current culture would show a comma.
    public QuantityConformanceTests() => CultureInfo.CurrentCulture = DecimalComma.Culture;

    public static TheoryData<string> Quantities => QuantityTypes.Names;

    public void Dispose() => CultureInfo.CurrentCulture = _before;

    [Fact]
    public void Suite_FindsTheQuantities()
        => Assert.Subset(
            QuantityTypes.All.Select(t => t.Name).ToHashSet(),
            new HashSet<string> { "Mass", "Length", "Duration", "Speed", "Acceleration", "Force", "Power", "Energy", "Momentum", "Impulse", "Angle", "Frequency", "ForcePerMass", "PowerPerMass" });

    [Fact]
    public void Culture_OfThisSuite_HasADecimalComma() => Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));

    [Theory, MemberData(nameof(Quantities))]
    public void Default_IsZero(string quantity) => QuantityTypes.Rules(quantity).DefaultIsZero();

    [Theory, MemberData(nameof(Quantities))]
    public void Units_EachHasOneFactoryAndOneProperty(string quantity) => QuantityTypes.Rules(quantity).EveryUnitHasOneFactoryAndOneProperty();

    [Theory, MemberData(nameof(Quantities))]
    public void From_EveryUnit_ComesBack(string quantity)
        => Assert.All([0, 1e-9, 0.1, 1, 57, 183, 225, 1e6, 1.23456789e12], number => QuantityTypes.Rules(quantity).EveryUnitComesBack(number));

    [Theory, MemberData(nameof(Quantities))]
    public void From_NotANumberOrInfinite_IsRefusedByName(string quantity)
        => Assert.All([double.NaN, double.PositiveInfinity, double.NegativeInfinity], number => QuantityTypes.Rules(quantity).FactoriesRefuse(number));

    [Theory, MemberData(nameof(Quantities))]
    public void From_Negative_IsRefusedUnlessThereIsAnOpposite(string quantity) => QuantityTypes.Rules(quantity).NegativeIsRefusedOrHasAnOpposite();

    [Theory, MemberData(nameof(Quantities))]
    public void Result_NotFinite_IsRefused(string quantity) => QuantityTypes.Rules(quantity).OverflowIsRefused();

    [Theory, MemberData(nameof(Quantities))]
    public void Order_FollowsTheNumber(string quantity) => QuantityTypes.Rules(quantity).OrderFollowsTheNumber(1.5, 2);

    [Theory, MemberData(nameof(Quantities))]
    public void Equality_FollowsTheNumber(string quantity) => QuantityTypes.Rules(quantity).EqualityFollowsTheNumber(102.5);

    [Theory, MemberData(nameof(Quantities))]
    public void Arithmetic_FollowsTheNumber(string quantity) => QuantityTypes.Rules(quantity).ArithmeticFollowsTheNumber(12.5, 0.7, 3);

    [Theory, MemberData(nameof(Quantities))]
    public void Ratio_ByZero_IsRefused(string quantity) => QuantityTypes.Rules(quantity).RatioByZeroIsRefused();

    [Theory, MemberData(nameof(Quantities))]
    public void ToString_UnderADecimalComma_IsInvariantWithUnit(string quantity) => QuantityTypes.Rules(quantity).TextIsInvariantWithUnit();

    [Theory, MemberData(nameof(Quantities))]
    public void ToString_UnknownUnit_ListsTheKnownOnes(string quantity) => QuantityTypes.Rules(quantity).UnknownUnitInAFormatIsRefused();

    [Theory, MemberData(nameof(Quantities))]
    public void Type_IsOneReadOnlyDoubleWithoutConversions(string quantity) => QuantityTypes.Rules(quantity).IsOneDoubleWithoutConversions();
}
