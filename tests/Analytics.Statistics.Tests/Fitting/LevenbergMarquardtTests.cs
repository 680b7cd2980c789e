using Analytics.Statistics.Fitting;

namespace Analytics.Statistics.Tests.Fitting;

public class LevenbergMarquardtTests
{
    private static readonly double[] X = [1, 2, 3, 5, 7, 10];
    private static readonly double[] Y = [109, 149, 149, 191, 213, 224]; // NIST BoxBOD

    // Certified optimum: b1 213.80940889 (SD 12.354515176), b2 0.54723748542; see NistTests.
    [Fact]
    public void Fit_ResultIsComplete()
    {
        var fit = LevenbergMarquardt.Fit(new Misra1a(), X, Y, [100, 0.75], new() { KeepIterates = true });
        Assert.Equal(FitEnding.Converged, fit.Ending);
        Assert.Equal((6, 4), (fit.N, fit.DegreesOfFreedom));
        Assert.Equal(fit.Rss!.Value, fit.Residuals.Sum(r => r * r), 1e-9);
        Assert.Equal(12.354515176, fit.StandardErrors![0], 1e-6);
        Assert.Equal(12.354515176 * 12.354515176, fit.Covariance![0, 0], 1e-4);
        Assert.Equal(fit.Covariance[0, 1], fit.Covariance[1, 0]);
        Assert.Equal([100, 0.75], fit.Iterates[0].Parameters);
        Assert.Equal(fit.Parameters, fit.Iterates[^1].Parameters);
        Assert.True(fit.Iterates.Count - 1 <= fit.Iterations && fit.Evaluations == fit.Iterations + 1);
        Assert.Empty(LevenbergMarquardt.Fit(new Misra1a(), X, Y, [100, 0.75]).Iterates);
    }

    [Fact]
    public void Fit_ExactData_ReachesIt()
    {
        double[] y = [.. X.Select(x => 200 * (1 - Math.Exp(-0.5 * x)))];
        var fit = LevenbergMarquardt.Fit(new Misra1a(), X, y, [150, 0.3]);
        Assert.True(fit.IsSolution);
        Assert.Equal(200, fit.Parameters[0], 1e-9);
        Assert.Equal(0.5, fit.Parameters[1], 1e-11);
    }

    [Fact]
    public void Fit_ScaledData_ScalesTheResult()
    {
        var plain = LevenbergMarquardt.Fit(new Misra1a(), X, Y, [100, 0.75]);
        var scaled = LevenbergMarquardt.Fit(new Misra1a(), X, [.. Y.Select(y => 1e-6 * y)], [1e-4, 0.75]);
        Assert.Equal(0, (scaled.Parameters[0] / plain.Parameters[0] * 1e6) - 1, 1e-9);
        Assert.Equal(plain.Parameters[1], scaled.Parameters[1], 1e-9);
        Assert.Equal(plain.StandardErrors![1], scaled.StandardErrors![1], 1e-9);
    }

    [Fact]
    public void Fit_AsManyPointsAsParameters_HasNoError()
    {
        var fit = LevenbergMarquardt.Fit(new Misra1a(), X.AsSpan(0, 2), Y.AsSpan(0, 2), [100, 0.75]);
        Assert.True(fit.IsSolution);
        Assert.Equal(0, fit.DegreesOfFreedom);
        Assert.Null(fit.ResidualSd);
        Assert.Null(fit.Covariance);
        Assert.Null(fit.StandardErrors);
        Assert.NotNull(fit.UnscaledCovariance); // ready for an error variance from elsewhere
    }

    [Fact]
    public void Fit_BoundBeforeTheOptimum_StopsThereWithoutErrors()
    {
        var fit = LevenbergMarquardt.Fit(new Misra1a(), X, Y, [100, 0.75], new() { Upper = [180, double.PositiveInfinity] });
        Assert.Equal(FitEnding.OnBound, fit.Ending);
        Assert.Equal(180, fit.Parameters[0]);
        Assert.Null(fit.StandardErrors);
        // With b1 = 180 the best b2 solves one equation; SciPy minimize_scalar gives 0.86372755 (RSS 3567.137687).
        Assert.Equal(0.86372755, fit.Parameters[1], 1e-7);
        Assert.Equal(3567.137687, fit.Rss!.Value, 1e-5);
        Assert.Equal("stopped on a bound; no standard errors", fit.Ending.InWords());
    }

    [Fact]
    public void Fit_BoundPassedOnTheWay_IsLeftAgain()
    {
        var fit = LevenbergMarquardt.Fit(new Misra1a(), X, Y, [300, 0.1], new() { Lower = [0, 0.2], Upper = [400, 5] });
        Assert.Equal(FitEnding.Converged, fit.Ending);
        Assert.Equal(213.80940889, fit.Parameters[0], 1e-5);
    }

    [Fact]
    public void Fit_ParametersThatCannotBeToldApart_SaysSo()
    {
        var fit = LevenbergMarquardt.Fit(new SumOfTwo(), X, Y, [1, 1]);
        Assert.Equal(FitEnding.NotIdentified, fit.Ending);
        Assert.Null(fit.Covariance);
        Assert.All(fit.Parameters, p => Assert.True(double.IsFinite(p)));
    }

    [Fact]
    public void Fit_FewerPointsThanParameters_SaysSo()
    {
        var fit = LevenbergMarquardt.Fit(new Misra1a(), X.AsSpan(0, 1), Y.AsSpan(0, 1), [100, 0.75]);
        Assert.Equal(FitEnding.TooFewPoints, fit.Ending);
        Assert.Null(fit.Rss);
        Assert.Equal([100, 0.75], fit.Parameters);
        Assert.Equal(-1, fit.DegreesOfFreedom);
    }

    [Fact]
    public void Fit_StartOutsideTheModel_SaysSo()
    {
        var fit = LevenbergMarquardt.Fit(new Misra1c(), X, Y, [100, -3]); // root of a negative number
        Assert.Equal(FitEnding.StartOutsideModel, fit.Ending);
        Assert.Null(fit.Rss);
    }

    [Fact]
    public void Fit_IterationLimit_KeepsWhatItHas()
    {
        var fit = LevenbergMarquardt.Fit(new Misra1a(), X, Y, [1, 1], new() { MaxIterations = 2 });
        Assert.Equal(FitEnding.IterationLimit, fit.Ending);
        Assert.Equal(2, fit.Iterations);
        Assert.Null(fit.StandardErrors);
        Assert.NotNull(fit.Rss);
    }

    [Fact]
    public void Fit_LargeProblem_UsesTheSameArithmetic()
    {
        // 2000 copies of BoxBOD: the same optimum, the covariance 2000 times smaller before scaling.
        double[] x = [.. Enumerable.Repeat(X, 2000).SelectMany(v => v)], y = [.. Enumerable.Repeat(Y, 2000).SelectMany(v => v)];
        var (many, one) = (LevenbergMarquardt.Fit(new Misra1a(), x, y, [100, 0.75]), LevenbergMarquardt.Fit(new Misra1a(), X, Y, [100, 0.75]));
        Assert.Equal(213.80940889, many.Parameters[0], 1e-5);
        Assert.Equal(0, (many.UnscaledCovariance![0, 0] * 2000 / one.UnscaledCovariance![0, 0]) - 1, 1e-8);
    }

    [Fact]
    public void Fit_LoopAllocatesNothing()
    {
        // Ten times the iterations, the same memory: what is left is the result itself.
        Assert.Equal(Allocated(2), Allocated(8));

        static long Allocated(int iterations)
        {
            var options = new FitOptions { MaxIterations = iterations, StepTolerance = 0, GradientTolerance = 0 };
            LevenbergMarquardt.Fit(new Misra1a(), X, Y, [300, 0.2], options);
            var before = GC.GetAllocatedBytesForCurrentThread();
            LevenbergMarquardt.Fit(new Misra1a(), X, Y, [300, 0.2], options);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    [Fact]
    public void Fit_BadArguments_NameTheNumber()
    {
        Assert.Contains("6 abscissas and 2 observations", Throws(() => LevenbergMarquardt.Fit(new Misra1a(), X, [1, 2], [1, 1])).Message, StringComparison.Ordinal);
        Assert.Contains("1 start values; the model has 2", Throws(() => LevenbergMarquardt.Fit(new Misra1a(), X, Y, [1])).Message, StringComparison.Ordinal);
        Assert.Contains("y[1] is NaN", Throws(() => LevenbergMarquardt.Fit(new Misra1a(), [1, 2], [1, double.NaN], [1, 1])).Message, StringComparison.Ordinal);
        Assert.Equal("options", Throws(() => LevenbergMarquardt.Fit(new Misra1a(), X, Y, [1, 1], new() { Lower = [0] })).ParamName);

        static ArgumentException Throws(Action action) => Assert.Throws<ArgumentException>(action);
    }

    private readonly struct SumOfTwo : IFitModel
    {
        public int ParameterCount => 2;

        public double Evaluate(double x, ReadOnlySpan<double> parameters, Span<double> gradient)
        {
            gradient[0] = gradient[1] = x;
            return (parameters[0] + parameters[1]) * x;
        }
    }
}
