using Analytics.Statistics.Change;

namespace Analytics.Statistics.Tests.Change;

public class IndividualChangeTests
{
    public static TheoryData<string> Cases => Oracle.Cases("change_");

    // R: pt, qt with the stated degrees of freedom; -1 stands for a known error.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Between_EveryCase_AgreesWithR(string name)
    {
        double V(string quantity) => Oracle.Value(name, quantity);
        var df = V("df") < 0 ? double.PositiveInfinity : V("df");
        var change = IndividualChange.Between(100, 100 + V("difference"), V("typical_error"), df, (int)V("occasions_before"));
        var shares = change.Shares(V("worthwhile"));
        Oracle.Close(V("above"), shares.Above, 1e-9);
        Oracle.Close(V("within"), shares.Within, 1e-9);
        Oracle.Close(V("below"), shares.Below, 1e-9);
        foreach (var level in new[] { 50, 90, 95 })
        {
            Oracle.Close(V($"low{level}"), change.Interval(level / 100.0).Low, 1e-9);
            Oracle.Close(V($"high{level}"), change.Interval(level / 100.0).High, 1e-9);
        }
    }

    // Welch–Satterthwaite with equal errors and 5 degrees each gives 10; R: t.test on such data.
    [Fact]
    public void BetweenOwnErrors_EqualErrors_AddsDegrees()
    {
        var change = IndividualChange.BetweenOwnErrors(10, 3, 5, 14, 3, 5);
        Oracle.Close(4.242640687119286, change.StandardError, 1e-14);
        Oracle.Close(10, change.DegreesOfFreedom, 1e-14);
    }

    [Fact]
    public void BetweenOwnErrors_KnownErrors_HasInfiniteDegrees()
        => Assert.Equal(double.PositiveInfinity, IndividualChange.BetweenOwnErrors(1, 3, double.PositiveInfinity, 2, 4, double.PositiveInfinity).DegreesOfFreedom);

    // SE² 2 with 10 degrees and a known 1.85: 10 (3.85/2)² = 37.05625 degrees; R: qt(.975, 37.05625) sqrt(3.85) = 3.97547299994.
    [Fact]
    public void WithKnownError_FiniteDegrees_FollowsWelch()
    {
        var change = IndividualChange.Between(0, 5, 1, 10).WithKnownError(Math.Sqrt(1.85));
        Oracle.Close(37.05625, change.DegreesOfFreedom, 1e-12);
        Oracle.Close(3.97547299994, change.DetectableChange(), 1e-10);
        Assert.Equal(5, change.Difference);
    }

    [Fact]
    public void WithKnownError_Nothing_ChangesNothing()
        => Assert.Equal(new IndividualChange(5, 2, 10), new IndividualChange(5, 2, 10).WithKnownError(0));

    [Fact]
    public void WithKnownError_Negative_Throws()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new IndividualChange(5, 2, 10).WithKnownError(-0.5));
        Assert.Equal("standardError", error.ParamName);
        Assert.Contains("-0.5", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_ZeroError_Throws()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => IndividualChange.Between(1, 2, 0, 9));
        Assert.Equal("typicalError", error.ParamName);
        Assert.Contains("typicalError is 0; allowed: above 0", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_NoOccasion_Throws()
        => Assert.Equal("occasionsBefore", Assert.Throws<ArgumentOutOfRangeException>(() => IndividualChange.Between(1, 2, 1, 9, 0)).ParamName);
}
