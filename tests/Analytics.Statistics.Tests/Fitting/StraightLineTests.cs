using Analytics.Statistics.Fitting;
using Analytics.Statistics.Tests.Reliability;

namespace Analytics.Statistics.Tests.Fitting;

public class StraightLineTests
{
    private static StraightLine Norris => StraightLine.Of(Oracle.Column("nist-norris.csv", 1), Oracle.Column("nist-norris.csv", 0));

    // Certified: intercept −0.262323073774029, slope 1.00211681802045, residual SD 0.884796396144373 [nist-strd].
    [Fact]
    public void Of_Norris_IsCertified()
    {
        Oracle.Close(-0.262323073774029, Norris.Intercept, 1e-12);
        Oracle.Close(1.00211681802045, Norris.Slope, 1e-14);
        Oracle.Close(0.884796396144373, Norris.ResidualStandardDeviation, 1e-12);
    }

    // R: confint(lm), predict(lm, interval = "confidence"), and "prediction" at 90 %.
    [Fact]
    public void Intervals_Norris_AgreeWithR()
    {
        Oracle.Close(PeerOracle.Value("norris", "slope_low"), Norris.SlopeEstimate().Interval!.Value.Low, 1e-12);
        Oracle.Close(PeerOracle.Value("norris", "intercept_high"), Norris.InterceptEstimate().Interval!.Value.High, 1e-9);
        Oracle.Close(PeerOracle.Value("norris", "low500"), Norris.MeanAt(500).Interval!.Value.Low, 1e-12);
        Oracle.Close(PeerOracle.Value("norris", "high0"), Norris.MeanAt(0).Interval!.Value.High, 1e-9);
        Oracle.Close(PeerOracle.Value("norris", "newlow0"), Norris.NewValueAt(0, 0.90).Interval!.Value.Low, 1e-10);
        Oracle.Close(PeerOracle.Value("norris", "newhigh500"), Norris.NewValueAt(500, 0.90).Interval!.Value.High, 1e-12);
        Oracle.Close(PeerOracle.Value("norris", "r"), Norris.Correlation!.Value, 1e-13);
    }

    // R's "women": p = 1.09e-14, too small for 1 − Cdf.
    [Fact]
    public void P_Tiny_KeepsItsDigits()
    {
        var line = StraightLine.Of([.. Enumerable.Range(58, 15).Select(i => (double)i)], [115, 117, 120, 123, 126, 129, 132, 135, 139, 142, 146, 150, 154, 159, 164]);
        Oracle.Close(PeerOracle.Value("women", "F"), line.F!.Value, 1e-11);
        Oracle.Close(PeerOracle.Value("women", "p"), line.P!.Value, 1e-9);
    }

    [Fact]
    public void Of_FarOffZero_KeepsItsDigits()
    {
        var far = StraightLine.Of([.. Oracle.Column("nist-norris.csv", 1).Select(x => x + 1e7)], Oracle.Column("nist-norris.csv", 0));
        Oracle.Close(Norris.Slope, far.Slope, 1e-9);
        Oracle.Close(Norris.SlopeError, far.SlopeError, 1e-6);
    }

    [Fact]
    public void Of_PointsOnALine_HasNoErrorAndInfiniteF()
    {
        var line = StraightLine.Of([1, 2, 3], [2, 4, 6]);
        Assert.Equal((2, 0, double.PositiveInfinity, 0, 1), (line.Slope, line.ResidualSquares, line.F, line.P, line.Correlation));
        Assert.Equal(1, line.Residual(2, 5), 12);
    }

    [Fact]
    public void Of_FlatPoints_HasNoCorrelationAndSaysWhy()
    {
        var line = StraightLine.Of([1, 2, 3], [4, 4, 4]);
        Assert.Equal((0, null, null, null), (line.Slope, line.Correlation, line.RSquared, line.P));
        Assert.Contains("All values of y are equal", line.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_OneX_NamesIt() => Assert.Contains("All 3 values of x are 5", Message([5, 5, 5], [1, 2, 3]), StringComparison.Ordinal);

    [Fact]
    public void Of_TwoPoints_LeaveNoDegreesOfFreedom() => Assert.Contains("x holds 2 values; at least 3", Message([1, 2], [1, 2]), StringComparison.Ordinal);

    [Fact]
    public void Of_UnequalLengths_Throws() => Assert.Contains("3 values of x but 4 of y", Message([1, 2, 3], [1, 2, 3, 4]), StringComparison.Ordinal);

    [Fact]
    public void Of_Infinity_NamesPlace() => Assert.Contains("y[2] is", Message([1, 2, 3], [1, 2, double.PositiveInfinity]), StringComparison.Ordinal);

    private static string Message(double[] x, double[] y) => Assert.Throws<ArgumentException>(() => StraightLine.Of(x, y)).Message;
}
