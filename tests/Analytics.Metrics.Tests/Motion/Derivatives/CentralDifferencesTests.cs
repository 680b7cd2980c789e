using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Derivatives;

public class CentralDifferencesTests
{
    private static (double[] V, double[] A) Of(double[] x, double step)
    {
        double[] v = new double[x.Length - 2], a = new double[x.Length - 2];
        CentralDifferences.Velocity(x, Duration.FromSeconds(step), v);
        CentralDifferences.Acceleration(x, Duration.FromSeconds(step), a);
        return (v, a);
    }

    // x = t³ at t = 1, Δt = 0.01: first difference 3.0001, second 6 exactly.
    [Fact]
    public void Both_Cubic_AreKnown()
    {
        var (v, a) = Of([0.99 * 0.99 * 0.99, 1, 1.01 * 1.01 * 1.01], 0.01);
        Assert.Equal(3.0001, v[0], 1e-12);
        Assert.Equal(6, a[0], 1e-9);
    }

    [Fact]
    public void Both_Walk_AreTheTable()
    {
        var step = 1 / 69.9;
        var (vx, ax) = Of(Metres("ankle_x_cm"), step);
        var (vy, ay) = Of(Metres("ankle_y_cm"), step);
        foreach (var row in OracleTable.Read("motion/walking_kinematics.csv"))
        {
            var i = (int)row["frame"] - 2;
            Assert.Equal(row["vx_m_s"], vx[i], 1e-9);
            Assert.Equal(row["vy_m_s"], vy[i], 1e-9);
            // Eight decimals given.
            Assert.Equal(row["ax_m_s2"], ax[i], 1e-8);
            Assert.Equal(row["ay_m_s2"], ay[i], 1e-8);
        }
        Assert.Equal(3.9805208947, vx.Max(), 1e-9);
        Assert.Equal(86, Array.IndexOf(vx, vx.Max()) + 2);
    }

    // Root-mean-square error against the acceleration measured directly [pezzack1977].
    [Fact]
    public void Acceleration_PezzacksAngle_HasTheErrorsOfTheTable()
    {
        var data = OracleTable.Read("motion/pezzack.csv");
        double[] raw = [.. data.Select(r => r["angle_rad"])], noisy = [.. data.Select(r => r["angle_noisy_rad"])], reference = [.. data.Select(r => r["reference_accel_rad_s2"])];
        foreach (var row in OracleTable.Read("motion/pezzack_rmse.csv"))
        {
            Assert.Equal(row["raw"], Error(raw, row["cutoff_hz"], reference, 1), 6e-9);
            Assert.Equal(row["raw_trimmed"], Error(raw, row["cutoff_hz"], reference, 10), 6e-9);
            Assert.Equal(row["noisy"], Error(noisy, row["cutoff_hz"], reference, 1), 6e-9);
            Assert.Equal(row["noisy_trimmed"], Error(noisy, row["cutoff_hz"], reference, 10), 6e-9);
        }
    }

    [Fact]
    public void Both_Bad_AreRefused()
    {
        Assert.Contains("2 samples", Assert.Throws<ArgumentException>(() => CentralDifferences.Velocity([1, 2], Duration.FromSeconds(1), [])).Message, StringComparison.Ordinal);
        Assert.Contains("3 samples have 1", Assert.Throws<ArgumentException>(() => CentralDifferences.Acceleration([1, 2, 3], Duration.FromSeconds(1), new double[3])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => CentralDifferences.Velocity([1, 2, 3], Duration.Zero, new double[1]));
    }

    private static double Error(double[] angle, double hertz, double[] reference, int trim)
    {
        const double step = 0.0201;
        var x = (double[])angle.Clone();
        if (hertz > 0) new LowPass(Frequency.FromHertz(hertz)).Apply(angle, Frequency.FromHertz(1 / step), x);
        var (_, a) = Of(x, step);
        return Math.Sqrt(Enumerable.Range(trim, x.Length - (2 * trim)).Average(i => Math.Pow(a[i - 1] - reference[i], 2)));
    }

    private static double[] Metres(string column) => [.. Walking.Filtered(column).Select(cm => cm / 100)];
}
