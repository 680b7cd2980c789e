namespace Analytics.Quantities.Tests;

/// <summary>The rules that every quantity keeps; one method per rule.</summary>
internal interface IQuantityRules
{
    void DefaultIsZero();

    void EveryUnitHasOneFactoryAndOneProperty();

    void EveryUnitComesBack(double number);

    void FactoriesRefuse(double number);

    void NegativeIsRefusedOrHasAnOpposite();

    void OverflowIsRefused();

    void OrderFollowsTheNumber(double low, double high);

    void EqualityFollowsTheNumber(double number);

    void ArithmeticFollowsTheNumber(double one, double other, double factor);

    void RatioByZeroIsRefused();

    void TextIsInvariantWithUnit();

    void UnknownUnitInAFormatIsRefused();

    void IsOneDoubleWithoutConversions();
}
