using Analytics.Statistics.Fitting;

namespace Analytics.Statistics.Tests.Fitting;

/// <summary>Fits that cannot end well say how they ended, and give no standard errors.</summary>
public class EndingTests
{
    private static readonly double[] X = [1, 2, 3, 5, 7, 10];
    private static readonly double[] Y = [109, 149, 149, 191, 213, 224]; // NIST BoxBOD

    [Fact]
    public void A_better_fit_beyond_the_edge_of_the_model_is_no_solution()
    {
        // The slope wants to be negative; the curve is not defined there.
        var fit = LevenbergMarquardt.Fit(new RootSlope(), X, [.. X.Select(x => -x)], [1.0]);
        Assert.Equal(FitEnding.EdgeOfModel, fit.Ending);
        Assert.Null(fit.StandardErrors);
        Assert.InRange(fit.Parameters[0], 0, 1e-3);
        Assert.Contains("where the curve ends", fit.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Derivatives_of_the_wrong_sign_are_not_taken_for_a_solution()
    {
        var fit = LevenbergMarquardt.Fit(new Wrong(-1), X, Y, [213, 0.9]);
        Assert.Equal(FitEnding.DerivativesDisagree, fit.Ending);
        Assert.False(fit.IsSolution);
        Assert.Null(fit.StandardErrors);
        Assert.Contains("check them", fit.Ending.InWords(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_parameter_without_influence_is_not_identified()
    {
        var fit = LevenbergMarquardt.Fit(new Idle(), X, Y, [100, 0.75, 3]);
        Assert.Equal(FitEnding.NotIdentified, fit.Ending);
        Assert.Equal(3, fit.Parameters[2]);
        Assert.Equal(213.80940889, fit.Parameters[0], 1e-5); // NIST; the others are found all the same
    }

    [Fact]
    public void All_points_at_one_abscissa_do_not_identify_two_parameters()
        => Assert.Equal(FitEnding.NotIdentified, LevenbergMarquardt.Fit(new Misra1a(), [2, 2, 2, 2], [100, 110, 120, 104], [100, 0.75]).Ending);

    [Theory]
    [InlineData(1e-3, false)]
    [InlineData(1e-9, true)]
    public void Nearly_equal_columns_are_a_solution_that_says_what_is_lost(double apart, bool ill)
    {
        var fit = LevenbergMarquardt.Fit(new NearlyTwo(apart), X, Y, [1, 1]);
        Assert.True(fit.IsSolution, fit.Ending.InWords());
        Assert.Equal(ill, fit.IsIllConditioned);
        Assert.Equal(ill, fit.ToString().Contains("Ill-conditioned", StringComparison.Ordinal));
        // Columns x and x + apart·x²: their angle is about apart times that between x and x², so the condition falls as 1/apart.
        Assert.InRange(fit.Condition!.Value * apart, 0.05, 5);
    }

    [Fact]
    public void Columns_at_right_angles_have_condition_1()
        => Assert.Equal(1, LevenbergMarquardt.Fit(new Line(), [-2, -1, 0, 1, 2], [1, 3, 2, 5, 4], [0, 0]).Condition!.Value, 1e-12);

    [Fact]
    public void No_degrees_of_freedom_say_so()
    {
        var text = LevenbergMarquardt.Fit(new Misra1a(), X.AsSpan(0, 2), Y.AsSpan(0, 2), [100, 0.75]).ToString();
        Assert.Contains("0 degrees of freedom", text, StringComparison.Ordinal);
        Assert.Contains("passes through all of them", text, StringComparison.Ordinal);
        Assert.Contains("no error known", text, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
    }

    [Fact]
    public void On_a_bound_the_text_says_so()
    {
        var fit = LevenbergMarquardt.Fit(new Misra1a(), X, Y, [100, 0.75], new() { Upper = [180, double.PositiveInfinity] });
        Assert.Contains("stopped on a bound", fit.ToString(), StringComparison.Ordinal);
        Assert.Null(fit.Parameter(0).StandardError);
        Assert.Null(fit.Condition);
    }

    [Fact]
    public void An_optimum_exactly_on_a_bound_keeps_its_errors()
    {
        // Y = 2x exactly but for residuals at right angles to x: the bound 2 does not push.
        var fit = LevenbergMarquardt.Fit(new Slope(), [1, 2], [2 + 2, 4 - 1], [1.0], new() { Upper = [2] });
        Assert.Equal(FitEnding.Converged, fit.Ending);
        Assert.Equal(2, fit.Parameters[0], 1e-12);
        Assert.Equal(1, fit.StandardErrors![0], 1e-9); // residual SD sqrt(5), length of x sqrt(5)
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_number_that_is_not_finite_is_named_with_its_place(double bad)
    {
        Assert.StartsWith("x[3] is", Error(() => LevenbergMarquardt.Fit(new Misra1a(), [1, 2, 3, bad], [1, 2, 3, 4], [1, 1])), StringComparison.Ordinal);
        Assert.StartsWith("y[1] is", Error(() => LevenbergMarquardt.Fit(new Misra1a(), [1, 2, 3, 4], [1, bad, 3, 4], [1, 1])), StringComparison.Ordinal);
        Assert.StartsWith("start[0] is", Error(() => LevenbergMarquardt.Fit(new Misra1a(), X, Y, [bad, 1])), StringComparison.Ordinal);
    }

    [Fact]
    public void Bounds_the_wrong_way_round_or_not_a_number_are_refused()
    {
        Assert.Contains("bounds of parameter 1 are 2 and 1", Error(() => LevenbergMarquardt.Fit(new Misra1a(), X, Y, [1, 1], new() { Lower = [0, 2], Upper = [9, 1] })), StringComparison.Ordinal);
        Assert.Contains("bounds of parameter 0 are NaN", Error(() => LevenbergMarquardt.Fit(new Misra1a(), X, Y, [1, 1], new() { Lower = [double.NaN, 2] })), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sum_of_squares_beyond_double_precision_cannot_start()
        => Assert.Equal(FitEnding.StartOutsideModel, LevenbergMarquardt.Fit(new Slope(), [1, 2], [1e200, 2e200], [1.0]).Ending);

    [Theory]
    [MemberData(nameof(Endings))]
    public void Every_ending_has_its_own_words(FitEnding ending)
        => Assert.Single(Enum.GetValues<FitEnding>(), e => e.InWords() == ending.InWords());

    public static TheoryData<FitEnding> Endings => [.. Enum.GetValues<FitEnding>()];

    private static string Error(Action action) => Assert.Throws<ArgumentException>(action).Message;

    private readonly struct RootSlope : IFitModel
    {
        public int ParameterCount => 1;

        public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
        {
            g[0] = x;
            return b[0] < 0 ? double.NaN : b[0] * x;
        }
    }

    private readonly struct Slope : IFitModel
    {
        public int ParameterCount => 1;

        public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g) => b[0] * (g[0] = x);
    }

    private readonly struct Line : IFitModel
    {
        public int ParameterCount => 2;

        public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
        {
            (g[0], g[1]) = (1, x);
            return b[0] + (b[1] * x);
        }
    }

    private readonly struct Idle : IFitModel
    {
        public int ParameterCount => 3;

        public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
        {
            g[2] = 0;
            return default(Misra1a).Evaluate(x, b, g);
        }
    }

    private readonly struct NearlyTwo(double apart) : IFitModel
    {
        public int ParameterCount => 2;

        public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
        {
            (g[0], g[1]) = (x, x + (apart * x * x));
            return (b[0] * g[0]) + (b[1] * g[1]);
        }
    }
}
