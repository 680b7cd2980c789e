using Analytics.Metrics.Jumping;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Jumping;

public class JumpPowerFormulaTests
{
    private static readonly Length Jump = Length.FromCentimetres(55);

    [Fact]
    public void Estimate_LinemanAbove110Kilograms_IsMarkedNotHidden()
    {
        var lineman = JumpPowerFormulas.HarmanPeak.Estimate(Jump, Mass.FromKilograms(140));
        Assert.Equal(6622.5, lineman.Power.Watts, 1e-6); // oracle row
        Assert.Equal("extrapolated: body mass above 110 kg", lineman.Doubt);
        Assert.Null(JumpPowerFormulas.HarmanPeak.Estimate(Jump, Mass.FromKilograms(110)).Doubt);
    }

    [Fact]
    public void Estimate_NegativeResult_IsMarked()
    {
        var child = JumpPowerFormulas.SayersSquat.Estimate(Length.FromCentimetres(5), Mass.FromKilograms(20));
        Assert.True(child.Power < Power.Zero);
        Assert.StartsWith("no power above 0 W", child.Doubt, StringComparison.Ordinal);
    }

    [Fact]
    public void Estimate_StatureMissing_NamesTheFormula()
    {
        var error = Assert.Throws<ArgumentNullException>(() => JumpPowerFormulas.JohnsonBahamondePeak.Estimate(Jump, Mass.FromKilograms(90)));
        Assert.Equal("stature", error.ParamName);
        Assert.Contains("Johnson–Bahamonde peak needs the stature", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Estimate_StatureNotNeeded_ChangesNothing()
    {
        var (without, with) = (JumpPowerFormulas.Amonette.Estimate(Jump, Mass.FromKilograms(90)), JumpPowerFormulas.Amonette.Estimate(Jump, Mass.FromKilograms(90), Length.FromCentimetres(180)));
        Assert.Equal(without.Power, with.Power);
    }

    [Fact]
    public void Estimate_NoBodyMass_SaysSo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => JumpPowerFormulas.Amonette.Estimate(Jump, Mass.Zero));
        Assert.Equal("bodyMass", error.ParamName);
        Assert.Contains("Body mass must be above 0 kg; got 0 kg", error.Message, StringComparison.Ordinal);
    }
}
