using FsCheck;
using FsCheck.Xunit;

namespace Analytics.Quantities.Tests;

/// <summary>Properties over many generated numbers; the seed is fixed.</summary>
[Properties(MaxTest = 500, Replay = "20260302,1")]
public class QuantityPropertyTests
{
    [Property]
    public void From_AnyFiniteNumber_ComesBackInEveryUnit(NormalFloat number)
        => Assert.All(QuantityTypes.All, t => QuantityTypes.Rules(t.Name).EveryUnitComesBack(Magnitude(number)));

    [Property]
    public void Arithmetic_AnyTwoNumbers_FollowsThem(NormalFloat one, NormalFloat other, NormalFloat factor)
        => Assert.All(QuantityTypes.All, t => QuantityTypes.Rules(t.Name).ArithmeticFollowsTheNumber(Magnitude(one), 0.001 + Magnitude(other), 0.001 + Magnitude(factor)));

    [Property]
    public void Order_AnyTwoNumbers_FollowsThem(NormalFloat low, NormalFloat step)
        => Assert.All(QuantityTypes.All, t => QuantityTypes.Rules(t.Name).OrderFollowsTheNumber(Magnitude(low), Magnitude(low) * 1.5 + 0.001 + Magnitude(step)));

    [Property]
    public void Sum_InAnyGrouping_IsTheSameToRounding(NormalFloat a, NormalFloat b, NormalFloat c)
    {
        var (x, y, z) = (Mass.FromKilograms(Magnitude(a)), Mass.FromKilograms(Magnitude(b)), Mass.FromKilograms(Magnitude(c)));

        Assert.Equal((x + y + z).Kilograms, (x + (y + z)).Kilograms, 1e-15 * (x + y + z).Kilograms);
    }

    // What a coach can measure lies well inside 1e-9 to 1e9 of any unit here.
    private static double Magnitude(NormalFloat number) => Math.Abs(number.Get) < 1e-9 ? 0 : Math.Min(Math.Abs(number.Get), 1e9);
}
