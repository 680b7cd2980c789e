using Analytics.Statistics.Change;

namespace Analytics.Statistics.Tests.Change;

public class SmallestWorthwhileChangeTests
{
    // R: 0.2 * sd and 0.2 * sqrt(sd^2 - te^2/k).
    [Theory]
    [InlineData(5, 2, 1, 1, 0.916515138991168)]
    [InlineData(5, 2, 3, 1, 0.972967967955095)]
    [InlineData(4.2, 1.1, 1, 0.84, 0.81067872798044969)]
    public void OfSpread_TabledCases_Agree(double sd, double te, int occasions, double observed, double corrected)
    {
        Oracle.Close(observed, SmallestWorthwhileChange.OfObservedSpread(sd).Value!.Value, 1e-12);
        Oracle.Close(corrected, SmallestWorthwhileChange.OfTrueSpread(sd, te, occasions).Value!.Value, 1e-12);
    }

    [Fact]
    public void OfTrueSpread_ErrorLargerThanSpread_ReportsNegativeVarianceAndNoValue()
    {
        var swc = SmallestWorthwhileChange.OfTrueSpread(1, 2);
        Assert.Null(swc.Value);
        Assert.Equal(-3, swc.TrueVariance);
        Assert.Contains("no between-athlete variance was found", swc.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void OfObservedSpread_EqualAthletes_HasNoValue() => Assert.Null(SmallestWorthwhileChange.OfObservedSpread(0).Value);

    [Fact]
    public void Anchored_KeepsValueAndBasis()
        => Assert.Equal(new SmallestWorthwhileChange(2.5, "set by the coach"), SmallestWorthwhileChange.Anchored(2.5, "set by the coach"));

    [Fact]
    public void Anchored_Negative_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => SmallestWorthwhileChange.Anchored(-1, "set by the coach"));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    public void BadSpread_IsNamed(double bad)
    {
        Assert.Equal("standardDeviation", Assert.Throws<ArgumentOutOfRangeException>(() => SmallestWorthwhileChange.OfObservedSpread(bad)).ParamName);
        Assert.Equal("typicalError", Assert.Throws<ArgumentOutOfRangeException>(() => SmallestWorthwhileChange.OfTrueSpread(1, bad)).ParamName);
        Assert.Equal("value", Assert.Throws<ArgumentOutOfRangeException>(() => SmallestWorthwhileChange.Anchored(bad, "coach")).ParamName);
    }

    [Fact]
    public void OfTrueSpread_AnotherUnit_Scales()
        => Oracle.Close(100 * SmallestWorthwhileChange.OfTrueSpread(5, 2, 3).Value!.Value, SmallestWorthwhileChange.OfTrueSpread(500, 200, 3).Value!.Value, 1e-13);

    // R 4.2.2: 0.2 * 5 * sqrt(19/qchisq(c(.975, .025), 19)); v <- 25 - 4, se <- sqrt(2 * (25^2/19 + 4^2/30)), 0.2 * sqrt(v -+ qnorm(.975) * se).
    [Fact]
    public void WithDoubt_TwentyAthletes_AgreesWithR()
    {
        var observed = SmallestWorthwhileChange.OfObservedSpread(5).WithDoubt(20).Interval!.Value;
        Oracle.Close(0.760490394329874, observed.Low);
        Oracle.Close(1.46057163611922, observed.High);
        var corrected = SmallestWorthwhileChange.OfTrueSpread(5, 2).WithDoubt(20, 30).Interval!.Value;
        Oracle.Close(0.446059908690101, corrected.Low);
        Oracle.Close(1.21697598902336, corrected.High);
    }

    [Fact]
    public void WithDoubt_NothingToDoubt_HasNoInterval()
    {
        Assert.Null(SmallestWorthwhileChange.Anchored(2, "set by the coach").WithDoubt(20).Interval);
        Assert.Null(SmallestWorthwhileChange.OfTrueSpread(1, 2).WithDoubt(20).Interval);
        Assert.Equal(0, SmallestWorthwhileChange.OfTrueSpread(2.1, 2).WithDoubt(5, 9).Interval!.Value.Low);
        Assert.Throws<ArgumentOutOfRangeException>(() => SmallestWorthwhileChange.OfObservedSpread(5).WithDoubt(1));
    }
}
