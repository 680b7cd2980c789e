using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Sprinting;

public class SplitModelChoiceTests
{
    // What can be told apart follows from the parameter count: 3 gates carry two parameters, 4 carry three.
    [Theory]
    [InlineData(StartType.FirstMovement, 3, StartModel.Still, false)]
    [InlineData(StartType.FirstMovement, 6, StartModel.Still, false)]
    [InlineData(StartType.StandingBeam, 3, StartModel.Still, true)]
    [InlineData(StartType.StandingBeam, 4, StartModel.RunIn, false)]
    [InlineData(StartType.ThreePointHand, 3, StartModel.Still, true)]
    [InlineData(StartType.ThreePointHand, 4, StartModel.Offset, false)]
    [InlineData(StartType.Signal, 3, StartModel.Still, true)]
    [InlineData(StartType.Signal, 5, StartModel.Offset, false)]
    public void For_StartAndGates_NamesTheModelAndTheBias(StartType start, int gates, StartModel model, bool caveat)
    {
        var choice = SplitModelChoice.For(start, gates);
        Assert.Equal(model, choice.Model);
        Assert.Equal(caveat, choice.Caveat is not null);
        if (caveat) Assert.Contains("3 gates", choice.Caveat, StringComparison.Ordinal);
    }
}
