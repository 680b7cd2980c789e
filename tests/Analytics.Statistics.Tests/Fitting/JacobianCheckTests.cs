using Analytics.Statistics.Fitting;

namespace Analytics.Statistics.Tests.Fitting;

public class JacobianCheckTests
{
    private static readonly double[] X = [1, 2, 3, 5, 7, 10];

    [Fact]
    public void A_right_model_agrees()
    {
        var check = JacobianCheck.Of(new Misra1a(), X, [200, 0.5]);
        Assert.True(check.Agrees);
        Assert.Equal(6, check.Points);
        // 1 - exp(-0.5 x) and 200 x exp(-0.5 x), wherever the worst place is.
        Assert.Equal(1 - Math.Exp(-0.5 * check.Derivatives[0].X), check.Derivatives[0].Numeric, 1e-9);
        Assert.Equal(200 * check.Derivatives[1].X * Math.Exp(-0.5 * check.Derivatives[1].X), check.Derivatives[1].Numeric, 1e-6);
    }

    [Fact]
    public void A_forgotten_factor_is_found_and_named()
    {
        var check = JacobianCheck.Of(new Wrong(1.001), X, [200, 0.5]);
        Assert.False(check.Agrees);
        Assert.True(check.Derivatives[0].Agrees);
        Assert.False(check.Derivatives[1].Agrees);
        Assert.Equal(2, check.Derivatives[1].X); // x exp(-0.5 x) is largest at 2
        Assert.Contains("by parameter 2", check.ToString(), StringComparison.Ordinal);
        Assert.Contains("does not agree", check.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_parameter_of_zero_and_a_derivative_of_zero_can_be_checked()
        => Assert.True(JacobianCheck.Of(new Misra1a(), X, [0, 0.5]).Agrees);

    [Fact]
    public void A_curve_not_defined_there_is_an_error_with_the_place()
    {
        var error = Assert.Throws<ArgumentException>(() => JacobianCheck.Of(new Misra1c(), X, [200, -1]));
        Assert.StartsWith("At x = 1 the curve is NaN", error.Message, StringComparison.Ordinal);
        Assert.Contains("at least one", Assert.Throws<ArgumentException>(() => JacobianCheck.Of(new Misra1a(), [], [1, 1])).Message, StringComparison.Ordinal);
    }
}

/// <summary>Misra1a with its second derivative off by a factor.</summary>
internal readonly struct Wrong(double factor) : IFitModel
{
    public int ParameterCount => 2;

    public double Evaluate(double x, ReadOnlySpan<double> b, Span<double> g)
    {
        var value = default(Misra1a).Evaluate(x, b, g);
        g[1] *= factor;
        return value;
    }
}
