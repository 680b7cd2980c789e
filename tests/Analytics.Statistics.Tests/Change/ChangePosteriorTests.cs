using Analytics.Statistics.Change;

namespace Analytics.Statistics.Tests.Change;

public class ChangePosteriorTests
{
    public static TheoryData<string> Posteriors => Oracle.Cases("posterior_");

    public static TheoryData<string> Tests => Oracle.Cases("tests_");

    [Theory]
    [MemberData(nameof(Posteriors))]
    public void Of_EveryPrior_AgreesWithR(string name)
    {
        double V(string quantity) => Oracle.Value(name, quantity);
        var posterior = ChangePosterior.Of(V("difference"), Math.Sqrt(2) * V("typical_error"), V("prior_mean"), V("prior_sd"));
        Oracle.Close(V("mean"), posterior.Mean);
        Oracle.Close(V("sd"), posterior.StandardDeviation);
        Oracle.Close(V("above"), posterior.Above(V("worthwhile")));
        Oracle.Close(V("below"), posterior.Below(-V("worthwhile")));
        Oracle.Close(V("low"), posterior.Interval().Low);
        Oracle.Close(V("high"), posterior.Interval().High);
    }

    [Theory]
    [MemberData(nameof(Tests))]
    public void ChangeTests_EveryCase_AgreesWithR(string name)
    {
        double V(string quantity) => Oracle.Value(name, quantity);
        var tests = ChangeTests.Of(IndividualChange.Between(0, V("difference"), V("typical_error"), V("df")), V("worthwhile"));
        Oracle.Close(V("no_change"), tests.NoChange, 1e-9);
        Oracle.Close(V("not_above"), tests.NotAbove, 1e-9);
        Oracle.Close(V("not_below"), tests.NotBelow, 1e-9);
        Oracle.Close(V("not_within"), tests.NotWithin, 1e-9);
    }

    // The flat prior says 76 %, a prior that expects small changes 50 %: the word probability needs its prior.
    [Fact]
    public void Of_PriorOfSmallChanges_LowersTheProbability()
    {
        var change = IndividualChange.Between(0, 3, 2, double.PositiveInfinity);
        Assert.Equal(0.76, change.Shares(1).Above, 2);
        Assert.Equal(0.50, ChangePosterior.Of(3, change.StandardError, 0, 2).Above(1), 2);
    }
}
