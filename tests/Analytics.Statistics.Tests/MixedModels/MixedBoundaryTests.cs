using Analytics.Statistics.MixedModels;

namespace Analytics.Statistics.Tests.MixedModels;

/// <summary>Fits whose best variance is 0 or whose best correlation is ±1 are results, and say so. Figures: lme4 on the same data (mixed-expected.csv).</summary>
public sealed class MixedBoundaryTests
{
    [Fact]
    public void Athletes_that_do_not_differ_have_variance_0_and_the_answers_of_an_ordinary_regression()
    {
        var fit = MixedExamples.Boundary().Fit();
        Assert.Equal(MixedEnding.OnBoundary, fit.Ending);
        Assert.Equal("The variance of '(Intercept)' between athletes is 0: the data show no more difference than error explains.", fit.Explanation);
        var model = fit.Require();
        Assert.Equal(0, model.RandomCovariance![0, 0]);
        Assert.Null(model.Variances[0].Interval);
        Assert.Equal(0, model.ProfileStandardDeviation(0).Low);
        Assert.True(model.ProfileStandardDeviation(0).High > 0);
        Assert.All(model.Effects, e => Assert.Equal(0, e.Effects[0].Value, 1e-9));
        Assert.Contains("on the boundary", model.ToString(), StringComparison.Ordinal);
        // 32 rows, 2 fixed effects: the degrees of freedom of a regression.
        Oracle.Close(30, model.FixedEffects[1].DegreesOfFreedom, 1e-9);
        var icc = VarianceIcc.Of(model);
        Assert.Equal(0, icc.Value);
        Assert.Equal(0, icc.Interval.Low);
        Assert.InRange(icc.Interval.High, 0.01, 0.6);
    }

    [Fact]
    public void A_correlation_of_1_is_said_in_words()
    {
        var fit = MixedExamples.BoundarySlope().Fit();
        Assert.Equal(MixedEnding.OnBoundary, fit.Ending);
        Assert.StartsWith("The correlation of '(Intercept)' and 'day' is 1:", fit.Explanation, StringComparison.Ordinal);
        var model = fit.Require();
        Oracle.Close(1, model.RandomCorrelation(0, 1)!.Value, 1e-9);
        Assert.Equal(1, model.ProfileCorrelation(0, 1).High);
        Assert.True(model.ProfileCorrelation(0, 1).Low < 0.99);
        Assert.True(double.IsFinite(model.FixedEffects[1].DegreesOfFreedom));
    }

    [Fact]
    public void Without_random_effects_it_is_an_ordinary_regression()
    {
        var model = MixedExamples.Sleep().Fit().Require();
        Assert.Null(model.RandomCovariance);
        Assert.Empty(model.Effects);
        // R 4.2.2: summary(lm(Reaction ~ Days)), sigma 47.71, 178 df, slope 10.467 (SE 1.238).
        Assert.Equal(47.71, Math.Sqrt(model.ResidualVariance), 0.005);
        Assert.Equal(1.238, model.FixedEffects[1].StandardError, 0.0005);
        Oracle.Close(178, model.FixedEffects[1].DegreesOfFreedom, 1e-10);
        Oracle.Close(178, model.FixedEffectsBy(DegreesOfFreedomMethod.KenwardRoger)[1].DegreesOfFreedom, 1e-10);
    }

    [Fact]
    public void A_single_variance_is_tested_by_the_half_and_half_mixture()
    {
        var (without, with) = (MixedExamples.Sleep().Fit().Require(), MixedExamples.SleepIntercept().Fit().Require());
        var test = LikelihoodRatio.Of(without, with);
        Assert.Equal(1, test.DegreesOfFreedom);
        Oracle.Close(test.P / 2, test.MixtureP!.Value, 1e-12);
        // logLik(lm, REML = TRUE) of R 4.2.2: 1893.664 for −2 log L.
        Assert.Equal(1893.664 - 1786.46508539492, test.ChiSquare, 0.001);
        Assert.Contains("half-and-half", test.ToString(), StringComparison.Ordinal);
        var zero = LikelihoodRatio.Of(Plain().Fit().Require(), MixedExamples.Boundary().Fit().Require());
        Assert.Equal(1, zero.MixtureP);

        static ModelDesign Plain()
        {
            var rows = Oracle.Rows("mixed-boundary.csv").ToList();
            return ModelDesign.Of(MixedExamples.Numbers(rows, 2), MixedExamples.Texts(rows, 0), "y", "athlete").Covariate("day", MixedExamples.Numbers(rows, 1));
        }
    }

    [Fact]
    public void Models_that_do_not_nest_are_refused()
    {
        var (ri, ris) = (MixedExamples.SleepIntercept(), MixedExamples.SleepSlope());
        Throws("more; at least 1", ris.Fit(), ri.RandomSlope("Days").Fit());
        Throws("fitted by Ml, the other by Reml", ri.Fit(LikelihoodCriterion.Ml), ris.Fit());
        Throws("different responses", MixedExamples.Dyestuff().Fit(), ri.Fit());
        Throws("that the larger one lacks", ris.Fit(), MixedExamples.SleepIntercept().Fit());
        var more = MixedExamples.SleepIntercept().Covariate("square", [.. Oracle.Rows("mixed-sleepstudy.csv").Select(r => Math.Pow(Oracle.Number(r[1]), 2))]);
        Throws("fit both by ML", ri.Fit(), more.Fit());
        Assert.Null(LikelihoodRatio.Of(ri.Fit(LikelihoodCriterion.Ml).Require(), more.Fit(LikelihoodCriterion.Ml).Require()).MixtureP);

        static void Throws(string words, MixedFit smaller, MixedFit larger)
            => Assert.Contains(words, Assert.Throws<ArgumentException>(() => LikelihoodRatio.Of(smaller.Require(), larger.Require())).Message, StringComparison.Ordinal);
    }
}
