using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Derivatives;

public class MarkerMotionTests
{
    [Fact]
    public void Of_Walk_HasBlankEndsAndTheTablesValues()
    {
        var motion = MarkerMotion.Of(ClipSmoother.Smooth(Walking.Clip, new(Frequency.FromHertz(6))).Clip, MarkerRole.Ankle);
        Assert.Null(motion.VelocityX[0]);
        Assert.Null(motion.AccelerationY[105]);
        Assert.Null(motion.VelocityStandardError);
        foreach (var row in OracleTable.Read("motion/walking_kinematics.csv"))
        {
            var i = (int)row["frame"] - 1;
            Assert.Equal(row["vx_m_s"], motion.VelocityX[i]!.Value, 1e-9);
            Assert.Equal(row["ay_m_s2"], motion.AccelerationY[i]!.Value, 1e-8);
        }
    }

    [Fact]
    public void Of_Gap_IsNotCrossed()
    {
        double[] x = [0, 1, 2, 3, double.NaN, 5, 6, 7];
        var motion = MarkerMotion.Of(new(FrameClock.FromRate(Frequency.FromHertz(10)), [new("hip", MarkerRole.Hip, x, x)], 0, Length.FromMillimetres(1)), MarkerRole.Hip);
        Assert.Equal([1, 2, 6], Enumerable.Range(0, 8).Where(i => motion.VelocityX[i] is not null));
        Assert.Equal(10, motion.VelocityX[6]!.Value, 1e-12);
        Assert.Equal(0.001 * 10 / Math.Sqrt(2), motion.VelocityStandardError!.Value.MetresPerSecond, 1e-12);
        Assert.Equal(0.001 * 100 * Math.Sqrt(6), motion.AccelerationStandardError!.Value.MetresPerSecondSquared, 1e-12);
    }
}
