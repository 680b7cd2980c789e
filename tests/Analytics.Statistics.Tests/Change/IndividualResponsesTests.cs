using Analytics.Statistics.Change;

namespace Analytics.Statistics.Tests.Change;

public class IndividualResponsesTests
{
    // R 4.2.2: 3^2 - 2*2^2, sqrt(2*(81/11 + 64/19)).
    [Fact]
    public void BeyondError_TypicalErrorForControls_AgreesWithR()
    {
        var responses = IndividualResponses.BeyondError(3, 12, 2, 19);
        Oracle.Close(1, responses.Variance);
        Oracle.Close(4.63293803460999, responses.VarianceError);
        Assert.Contains("responses may be all alike", responses.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Between_ControlsVaryMore_KeepsTheSign()
    {
        var responses = IndividualResponses.Between(4, 15, 5, 12);
        Assert.Equal(-3, responses.StandardDeviation);
        Assert.Null(responses.Responders(2, 1));
        Assert.Contains("negative: no difference in response was found", responses.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Between_AnotherUnit_Scales()
    {
        IndividualResponses own = IndividualResponses.Between(6, 20, 4, 20), scaled = IndividualResponses.Between(60, 20, 40, 20);
        Oracle.Close(10 * own.StandardDeviation, scaled.StandardDeviation);
        Oracle.Close(10 * own.Interval.Low, scaled.Interval.Low);
        Oracle.Close(own.Responders(2.5, 1)!.Above, scaled.Responders(25, 10)!.Above);
    }

    [Fact]
    public void Shares_AddToOneAndTurnWithTheSign()
    {
        ResponderShares up = ResponderShares.Of(2.5, 3, 1), down = ResponderShares.Of(-2.5, 3, 1);
        Oracle.Close(1, up.Above + up.Within + up.Below, 1e-14);
        Oracle.Close(up.Above, down.Below, 1e-14);
    }

    [Fact]
    public void BadInput_IsNamed()
    {
        Assert.Contains("withProgramme is -1", Message(() => IndividualResponses.Between(-1, 20, 4, 20)), StringComparison.Ordinal);
        Assert.Contains("athletes is 1; allowed: 2 or more", Message(() => IndividualResponses.Between(6, 1, 4, 20)), StringComparison.Ordinal);
        Assert.Contains("without is NaN", Message(() => IndividualResponses.Between(6, 20, double.NaN, 20)), StringComparison.Ordinal);
        Assert.Contains("degreesOfFreedom is 0", Message(() => IndividualResponses.BeyondError(6, 20, 4, 0)), StringComparison.Ordinal);
        Assert.Contains("spread is 0; allowed: above 0", Message(() => ResponderShares.Of(1, 0, 1)), StringComparison.Ordinal);
    }

    private static string Message(Func<object> act) => Assert.ThrowsAny<ArgumentException>(act).Message;
}
