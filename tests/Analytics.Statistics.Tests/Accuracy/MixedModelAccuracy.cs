using Analytics.Statistics.MixedModels;
using Analytics.Statistics.Tests.MixedModels;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Dyestuff and sleepstudy: balanced, so most figures have a closed form.</summary>
public sealed class MixedModelAccuracy : AccuracySection
{
    private const string Search = "lme4's search stops near 1e-7 in its parameters; degrees of freedom follow from numerical derivatives there";
    private const string PofDf = "p follows from those degrees of freedom: 40 standard errors out it moves 20 times as much";
    private const string Spline = "lme4 reads the limits off a spline of the profile";
    private const string Newton = "the oracle is lme4's model, polished by Newton steps on differences";

    public override string Section => "9";

    public override string Title => "Linear mixed models";

    public override void Fill(AccuracyBook book)
    {
        Sleep(book, "sleep_ri", MixedExamples.SleepIntercept());
        Sleep(book, "sleep_ris", MixedExamples.SleepSlope());
        Sleep(book, "sleep_uncorr", MixedExamples.SleepSlope().Uncorrelated());
        foreach (var ml in new[] { false, true }) Fit(book, ml ? "dye_ML" : "dye_REML", MixedExamples.Dyestuff(), ml);
        Groups(book);
        ClosedForms(book);
        Tests(book);
        Profiles(book);
        book.Leave("sleep_ri_AR1_REML", "errors that follow each other in time are not part of the model");
        book.Leave("sleep_ris_helpers", "steps of the closed form; the model never forms them", "S_int_int(17)", "S_slope_slope(17)", "S_int_slope(17)", "C_int_int", "C_slope_slope", "C_int_slope", "df");
    }

    private static void Sleep(AccuracyBook book, string name, ModelDesign design)
    {
        Fit(book, name + "_REML", design, false);
        Fit(book, name + "_ML", design, true);
    }

    private static void Fit(AccuracyBook book, string name, ModelDesign design, bool ml)
    {
        var model = design.Fit(ml ? LikelihoodCriterion.Ml : LikelihoodCriterion.Reml).Require();
        for (var j = 0; j < model.FixedEffects.Count; j++)
        {
            var effect = model.FixedEffects[j];
            book.Check(name, "beta_" + effect.Name, effect.Value);
            book.Check(name, "se_" + effect.Name, effect.StandardError);
        }

        if (model.FixedEffects.Count == 2) book.Check(name, "corr_fixed", model.FixedCovariance.Correlation(0, 1));
        var parts = model.Variances;
        Variance("residual", parts[^1]);
        Variance("intercept", parts[0]);
        if (parts.Count == 3)
        {
            Variance("slope", parts[1]);
            book.Check(name, "cov_int_slope", model.RandomCovariance![0, 1]);
            book.Check(name, "corr_int_slope", model.RandomCorrelation(0, 1)!.Value);
        }

        book.Check(name, "minus2logLik", model.MinusTwoLogLikelihood);
        book.Check(name, "logLik", model.LogLikelihood);
        book.Check(name, "AIC", model.Aic);
        book.Check(name, "BIC", model.Bic);
        DegreesOfFreedom(book, name, model);

        void Variance(string part, VarianceComponent component)
        {
            book.Check(name, "var_" + part, component.Variance, name.Contains("uncorr", StringComparison.Ordinal) ? 1e-8 : AccuracyBook.Usual, Newton);
            book.Check(name, "sd_" + part, component.StandardDeviation);
        }
    }

    private static void DegreesOfFreedom(AccuracyBook book, string name, MixedModel model)
    {
        var open = book.Quantities(name);
        foreach (var f in model.FixedEffects.Where(f => open.Contains("satterthwaite_df_" + f.Name)))
        {
            book.Check(name, "satterthwaite_df_" + f.Name, f.DegreesOfFreedom, 1e-5, Search);
            book.Check(name, "t_" + f.Name, f.T, 1e-6, Search);
            book.Check(name, "p_" + f.Name, f.P, 1e-4, PofDf);
        }

        if (!open.Any(q => q.StartsWith("KR_", StringComparison.Ordinal))) return;
        foreach (var f in model.FixedEffectsBy(DegreesOfFreedomMethod.KenwardRoger))
        {
            book.Check(name, "KR_df_" + f.Name, f.DegreesOfFreedom, 1e-5, Search);
            book.Check(name, "KR_se_" + f.Name, f.StandardError, 1e-6, Search);
        }
    }

    private static void Groups(AccuracyBook book)
    {
        var sleep = MixedExamples.SleepSlope().Fit().Require();
        foreach (var subject in new[] { "308", "309" })
        {
            var effects = sleep.Effects.Single(e => e.Group == subject).Effects;
            foreach (var (name, effect) in new[] { ("intercept", effects[0]), ("slope", effects[1]) })
            {
                book.Check("sleep_ris_REML", $"blup_{subject}_{name}", effect.Value);
                if (subject == "308") book.Check("sleep_ris_REML", $"condsd_{subject}_{name}", effect.ConditionalStandardError);
            }
        }

        foreach (var day in new[] { 0, 9 })
            book.Check("sleep_ris_REML", $"pred308_day{day}", sleep.Predict(new ModelPoint().With("Days", day), "308").Value);
        foreach (var batch in MixedExamples.Dyestuff().Fit().Require().Effects) book.Check("dye_REML", "blup_" + batch.Group, batch.Effects[0].Value);
    }

    private static void ClosedForms(AccuracyBook book)
    {
        var (reml, ml) = (MixedExamples.Dyestuff().Fit().Require(), MixedExamples.Dyestuff().Fit(LikelihoodCriterion.Ml).Require());
        var (b, e) = (reml.Variances[0].Variance, reml.Variances[1].Variance);
        book.Check("dye_closed_form", "MS_batch", e + (5 * b));
        book.Check("dye_closed_form", "MS_error", e);
        book.Check("dye_closed_form", "F", (e + (5 * b)) / e);
        book.Check("dye_closed_form", "sigma2_b_REML=(MSB-MSE)/5", b);
        book.Check("dye_closed_form", "sigma2_b_ML=((1-1/6)MSB-MSE)/5", ml.Variances[0].Variance);
        book.Check("dye_closed_form", "se_mean_REML=sqrt(MSB/30)", reml.FixedEffects[0].StandardError);
        book.Check("dye_closed_form", "shrink_REML", reml.Effects[4].Effects[0].Value / (Oracle.Rows("mixed-dyestuff.csv").Where(r => r[0] == "E").Average(r => Oracle.Number(r[1])) - 1527.5));
        book.Check("dye_closed_form", "ICC1", VarianceIcc.Of(reml).Value);

        var sleep = MixedExamples.SleepIntercept().Fit().Require();
        (b, e) = (sleep.Variances[0].Variance, sleep.Variances[1].Variance);
        book.Check("sleep_ri_closed_form", "MSB_subject", e + (10 * b));
        book.Check("sleep_ri_closed_form", "MSE", e);
        book.Check("sleep_ri_closed_form", "sigma2_b_REML", b);
        book.Check("sleep_ri_closed_form", "se_slope=sqrt(MSE/(18*82.5))", sleep.FixedEffects[1].StandardError);
        book.Check("sleep_ris_helpers", "pooled_OLS_resid_var", MixedExamples.SleepSlope().Fit().Require().ResidualVariance);
    }

    private static void Tests(AccuracyBook book)
    {
        foreach (var (name, criterion) in new[] { ("sleep_LRT_ri_vs_ris_ML", LikelihoodCriterion.Ml), ("sleep_LRT_REML", LikelihoodCriterion.Reml) })
        {
            var test = LikelihoodRatio.Of(MixedExamples.SleepIntercept().Fit(criterion).Require(), MixedExamples.SleepSlope().Fit(criterion).Require());
            book.Check(name, "chisq", test.ChiSquare);
            if (criterion == LikelihoodCriterion.Ml)
            {
                book.Check(name, "df", test.DegreesOfFreedom);
                book.Check(name, "p", test.P);
            }
            else
            {
                book.Check(name, "p_chi2_2", test.P);
                book.Check(name, "p_mixture_1_2", test.MixtureP!.Value);
            }
        }
    }

    private static void Profiles(AccuracyBook book)
    {
        var sleep = MixedExamples.SleepSlope().Fit(LikelihoodCriterion.Ml).Require();
        Limits("sleep_ris_ML", "sd_(Intercept)|Subject", sleep.ProfileStandardDeviation(0));
        Limits("sleep_ris_ML", "sd_Days|Subject", sleep.ProfileStandardDeviation(1));
        Limits("sleep_ris_ML", "cor_Days.(Intercept)|Subject", sleep.ProfileCorrelation(0, 1));
        Limits("sleep_ris_ML", "sigma", sleep.ProfileResidual());
        Limits("sleep_ris_ML", "(Intercept)", sleep.ProfileFixedEffect(0));
        Limits("sleep_ris_ML", "Days", sleep.ProfileFixedEffect(1));
        var dye = MixedExamples.Dyestuff().Fit(LikelihoodCriterion.Ml).Require();
        Limits("dye_ML", "sd_(Intercept)|Batch", dye.ProfileStandardDeviation(0));
        Limits("dye_ML", "sigma", dye.ProfileResidual());
        Limits("dye_ML", "(Intercept)", dye.ProfileFixedEffect(0));
        foreach (var f in MixedExamples.SleepSlope().Fit().Require().FixedEffects)
        {
            var z = Analytics.Statistics.Distributions.NormalLaw.TwoSided(0.95);
            book.Check("sleep_ris_REML", $"waldCI_{f.Name}_lo", f.Value - (z * f.StandardError), 1e-6, Search);
            book.Check("sleep_ris_REML", $"waldCI_{f.Name}_hi", f.Value + (z * f.StandardError), 1e-6, Search);
        }

        void Limits(string name, string parameter, Interval interval)
        {
            book.Check(name, $"profileCI_{parameter}_lo", interval.Low, 1e-3, Spline);
            book.Check(name, $"profileCI_{parameter}_hi", interval.High, 1e-3, Spline);
        }
    }
}
