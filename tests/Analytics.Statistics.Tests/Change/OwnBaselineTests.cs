using Analytics.Statistics.Change;

namespace Analytics.Statistics.Tests.Change;

public class OwnBaselineTests
{
    private static readonly double[] s_baseline = [101, 99.5, 100.2, 102, 100.8];

    // R 4.2.2: mean, sd * sqrt(1 + 1/5), qt(.975, 4).
    [Fact]
    public void FromOwnBaseline_FiveTests_AgreesWithR()
    {
        var change = IndividualChange.FromOwnBaseline(s_baseline, 104);
        Oracle.Close(3.3, change.Difference, 1e-12);
        Oracle.Close(1.021763181955583, change.StandardError, 1e-12);
        Oracle.Close(0.463130614788095, change.Interval().Low);
        Oracle.Close(6.136869385211899, change.Interval().High);
    }

    [Fact]
    public void FromOwnBaseline_ShiftScaleOrder_FollowTheUnit()
    {
        IndividualChange own = IndividualChange.FromOwnBaseline(s_baseline, 104),
            moved = IndividualChange.FromOwnBaseline([.. s_baseline.Reverse().Select(v => 2 * v - 30)], 2 * 104 - 30);
        Oracle.Close(2 * own.Difference, moved.Difference, 1e-11);
        Oracle.Close(2 * own.StandardError, moved.StandardError, 1e-11);
    }

    // Four own tests and an unchanged fifth: wrong in 5 % (standard error 0.15 points), where mean ± 2 SD is wrong in 17 %.
    [Fact]
    public void FromOwnBaseline_UnchangedAthlete_IsWrongAtItsStatedRate()
    {
        var random = new Gaussian(4);
        const int Runs = 20000;
        int wrong = 0, naive = 0;
        for (var run = 0; run < Runs; run++)
        {
            double[] own = [random.Next(), random.Next(), random.Next(), random.Next()];
            var change = IndividualChange.FromOwnBaseline(own, random.Next());
            if (!change.Interval().Contains(0)) wrong++;
            if (Math.Abs(change.Difference) > 2 * change.StandardError / Math.Sqrt(1.25)) naive++;
        }

        Assert.InRange(wrong / (double)Runs, 0.0438, 0.0562);
        Assert.InRange(naive / (double)Runs, FlagRates.OwnBaseline(2, 4) - 0.011, FlagRates.OwnBaseline(2, 4) + 0.011);
    }

    [Fact]
    public void FromOwnBaseline_BadInput_SaysWhy()
    {
        Assert.Contains("holds 1 values; at least 2", Message(() => IndividualChange.FromOwnBaseline([1], 2)), StringComparison.Ordinal);
        Assert.Contains("All 3 values of baseline are equal", Message(() => IndividualChange.FromOwnBaseline([2, 2, 2], 3)), StringComparison.Ordinal);
        Assert.Contains("baseline[1] is NaN", Message(() => IndividualChange.FromOwnBaseline([1, double.NaN], 2)), StringComparison.Ordinal);
        Assert.Contains("after is ", Message(() => IndividualChange.FromOwnBaseline([1, 2], double.PositiveInfinity)), StringComparison.Ordinal);
        Assert.Contains("StandardError is -1", Message(() => new IndividualChange(1, -1, 5)), StringComparison.Ordinal);
        Assert.Contains("DegreesOfFreedom is 0", Message(() => new IndividualChange(1, 1, 0)), StringComparison.Ordinal);
        Assert.Contains("tests is 1; allowed: 2 or more", Message(() => (object)FlagRates.OwnBaseline(2, 1)), StringComparison.Ordinal);
    }

    [Fact]
    public void Tests_NoError_RefuseToDivideByIt()
        => Assert.Contains("error of 0", Assert.Throws<InvalidOperationException>(() => ChangeTests.Of(new IndividualChange(0, 0, 5), 0)).Message, StringComparison.Ordinal);

    private static string Message(Func<object> act) => Assert.ThrowsAny<ArgumentException>(act).Message;
}
