using Analytics.Metrics.Sprinting.Fits;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sprinting.Fits;

public class SplitErrorPoolTests
{
    private static readonly SplitFit Three = SplitFitter.Fit(Gates.ThreeGates);
    private static readonly SplitFit Five = SplitFitter.Fit(Gates.FiveGates);

    [Fact]
    public void Of_TwoFits_PoolsSquaresAndFreedom()
    {
        var pool = SplitErrorPool.Of([Three, Five, SplitFitter.Fit([])])!;
        Assert.Equal(2, pool.Fits);
        Assert.Equal(4, pool.DegreesOfFreedom);
        // RSS of the two worked fits: 0.001505727435 (1 df) and 3.573436723e-5 (3 df); sqrt of their sum over 4 by hand.
        Assert.Equal(0.0196307272, pool.ResidualSd, 1e-8);
    }

    [Fact]
    public void With_Pool_ChangesTheErrorAndNothingElse()
    {
        var pool = SplitErrorPool.Of([Three, Five])!;
        var shared = Three.With(pool);
        Assert.Equal(Three.Curve!.TopSpeed.Value, shared.Curve!.TopSpeed.Value);
        // Own: SE 0.230972794 at s = 0.0388037 with 1 df. Pooled: s = 0.0196307 with 4 df, t(0.975) = 2.776445 (any table).
        Assert.Equal(0.230972794 * 0.0196307272 / Math.Sqrt(0.001505727435), shared.Curve.TopSpeed.StandardError!.Value, 1e-7);
        var interval = shared.Curve.TopSpeed.Interval!.Value;
        Assert.Equal(2.776445105 * shared.Curve.TopSpeed.StandardError!.Value, 0.5 * (interval.High - interval.Low), 1e-7);
        Assert.Contains("error pooled over 2 runs, 4 df", shared.Curve.SpeedAt(Length.FromMetres(10)).Method, StringComparison.Ordinal);
        Assert.Equal(4, shared.Curve.DegreesOfFreedom);
        Assert.Equal(1, shared.DegreesOfFreedom);
    }

    [Fact]
    public void Of_NoCurve_IsNothing() => Assert.Null(SplitErrorPool.Of([SplitFitter.Fit([])]));

    [Fact]
    public void Of_TwoModels_NamesBoth()
    {
        var error = Assert.Throws<ArgumentException>(() => SplitErrorPool.Of([Three, SplitFitter.Fit(Gates.FiveGates, StartModel.Offset)]));
        Assert.Equal("fits", error.ParamName);
        Assert.Contains("still start", error.Message, StringComparison.Ordinal);
        Assert.Contains("start with clock offset", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void With_PoolOfAnotherModel_IsRefused()
    {
        var pool = SplitErrorPool.Of([SplitFitter.Fit(Gates.FiveGates, StartModel.Offset)])!;
        Assert.Equal("pool", Assert.Throws<ArgumentException>(() => Three.With(pool)).ParamName);
        // A run that could not be fitted stays a result with words.
        var none = SplitFitter.Fit([]).With(SplitErrorPool.Of([Three])!);
        Assert.Null(none.Curve);
    }
}
