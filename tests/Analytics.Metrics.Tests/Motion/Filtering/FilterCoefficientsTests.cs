using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Filtering;

public class FilterCoefficientsTests
{
    // Table to 14 digits; the recursion's coefficients are of order 1.
    [Fact]
    public void For_Table_IsReproduced()
    {
        var rows = OracleTable.Read("motion/butterworth_coefficients.csv");
        Assert.Equal(18, rows.Count);
        foreach (var row in rows)
        {
            var c = FilterCoefficients.For(FilterShape.Butterworth, Frequency.FromHertz(row["fc_hz"]), Frequency.FromHertz(row["fs_hz"]), (int)row["passes_corrected_for"]);
            Assert.Equal(row["C"], c.Correction, 1e-13);
            Assert.Equal(row["omega_c"], c.WarpedCutoff, 1e-13);
            Assert.Equal([row["a0"], row["a1"], row["a2"], row["b1"], row["b2"]], new[] { c.A0, c.A1, c.A2, c.B1, c.B2 }, (a, b) => Math.Abs(a - b) < 1e-12);
        }
    }

    // Printed in [winter2009] for fs/fc = 10, uncorrected.
    [Fact]
    public void For_WintersExample_IsAsPrinted()
    {
        var c = FilterCoefficients.For(FilterShape.Butterworth, Frequency.FromHertz(6), Frequency.FromHertz(60), 1);
        Assert.Equal([0.06746, 0.13491, 0.06746, 1.14298, -0.41280], new[] { c.A0, c.A1, c.A2, c.B1, c.B2 }, (a, b) => Math.Abs(a - b) < 5.1e-6);
    }

    // 20 Hz at 120 Hz: on the warped frequency 0.7196698257; on fc itself it would be 0.7644233635.
    [Fact]
    public void For_Correction_ActsOnTheWarpedFrequency()
        => Assert.Equal(0.7196698257, FilterCoefficients.For(FilterShape.Butterworth, Frequency.FromHertz(20), Frequency.FromHertz(120), 2).WarpedCutoff, 5e-11);

    [Fact]
    public void For_CriticallyDamped_HasItsOwnCorrection()
        => Assert.Equal(0.434979442046082, FilterCoefficients.For(FilterShape.CriticallyDamped, Frequency.FromHertz(6), Frequency.FromHertz(60), 2).Correction, 1e-14);

    [Theory]
    [InlineData(FilterShape.Butterworth, 1)]
    [InlineData(FilterShape.Butterworth, 2)]
    [InlineData(FilterShape.CriticallyDamped, 2)]
    public void For_Any_PassesAConstant(FilterShape shape, int passes)
    {
        for (var hertz = 0.5; hertz < 60; hertz += 1.7)
        {
            var c = FilterCoefficients.For(shape, Frequency.FromHertz(hertz), Frequency.FromHertz(120), passes);
            Assert.Equal(1, c.A0 + c.A1 + c.A2 + c.B1 + c.B2, 1e-12);
        }
    }

    [Theory]
    [InlineData(30)]
    [InlineData(31)]
    [InlineData(0)]
    public void For_CutoffAtHalfTheRate_IsRefusedWithTheLimit(double hertz)
        => Assert.Contains("below half the frame rate, 30 Hz", Assert.Throws<ArgumentOutOfRangeException>(() =>
            FilterCoefficients.For(FilterShape.Butterworth, Frequency.FromHertz(hertz), Frequency.FromHertz(60), 2)).Message, StringComparison.Ordinal);
}
