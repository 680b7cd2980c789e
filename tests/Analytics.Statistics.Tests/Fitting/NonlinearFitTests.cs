using Analytics.Statistics.Fitting;

namespace Analytics.Statistics.Tests.Fitting;

public class NonlinearFitTests
{
    private static readonly NonlinearFit s_fit = LevenbergMarquardt.Fit(
        new Misra1a(), [1, 2, 3, 5, 7, 10], [109, 149, 149, 191, 213, 224], [100, 0.75]) with { ParameterNames = ["ceiling", "rate"] };

    // NIST BoxBOD: 213.80940889 with SD 12.354515176 on 4 df; t(.975; 4) = 2.776445105 (R qt).
    [Fact]
    public void Parameter_has_its_t_interval()
    {
        var ceiling = s_fit.Parameter(0);
        Assert.Equal(213.80940889, ceiling.Value, 1e-6);
        Assert.Equal(12.354515176, ceiling.StandardError!.Value, 1e-7);
        Assert.Equal(213.80940889 - (2.776445105 * 12.354515176), ceiling.Interval!.Value.Low, 1e-5);
        Assert.Equal(213.80940889 + (2.776445105 * 12.354515176), ceiling.Interval.Value.High, 1e-5);
        Assert.Equal(6, ceiling.N);
    }

    [Fact]
    public void Text_names_parameters_doubt_basis_and_ending()
    {
        var text = s_fit.ToString();
        Assert.Contains("ceiling", text, StringComparison.Ordinal);
        Assert.Contains("213.8", text, StringComparison.Ordinal);
        Assert.Contains("179.5 to 248.1 (95 %)", text, StringComparison.Ordinal);
        Assert.Contains("From: 6 points, 2 parameters, 4 degrees of freedom", text, StringComparison.Ordinal);
        Assert.Contains("Ending: converged", text, StringComparison.Ordinal);
        Assert.DoesNotContain("parameter 1", text, StringComparison.Ordinal);
        Assert.Contains("parameter 1", (s_fit with { ParameterNames = [] }).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_fit_that_did_not_start_prints_too()
    {
        var text = LevenbergMarquardt.Fit(new Misra1a(), [1.0], [109.0], [100, 0.75]).ToString();
        Assert.Contains("fewer points than parameters", text, StringComparison.Ordinal);
        Assert.Contains("no error known", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Parameter_outside_the_model_or_level_is_an_error()
    {
        Assert.Contains("the model has 2", Assert.Throws<ArgumentOutOfRangeException>(() => s_fit.Parameter(2)).Message, StringComparison.Ordinal);
        Assert.Equal("level", Assert.Throws<ArgumentOutOfRangeException>(() => s_fit.Parameter(0, 1)).ParamName);
    }
}
