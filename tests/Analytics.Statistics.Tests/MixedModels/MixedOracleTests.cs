using Analytics.Statistics.MixedModels;

namespace Analytics.Statistics.Tests.MixedModels;

/// <summary>
/// Unbalanced data against lme4, lmerTest and pbkrtest (mixed-expected.csv, made by generate-mixed.R). lme4's maximum was carried on by Newton
/// steps with numerical derivatives, which leaves it good to about 1e-6; degrees of freedom need numerical second derivatives once more.
/// </summary>
public sealed class MixedOracleTests
{
    private static readonly Dictionary<string, (Func<ModelDesign> Design, string Names)> s_cases = new()
    {
        ["orthodont_intercept"] = (MixedExamples.Orthodont, "(Intercept),age,SexFemale,age:SexFemale"),
        ["orthodont_slope"] = (() => MixedExamples.Orthodont().RandomSlope("age"), "(Intercept),age,SexFemale,age:SexFemale"),
        ["orthodont_slope_ML"] = (() => MixedExamples.Orthodont().RandomSlope("age"), "(Intercept),age,SexFemale,age:SexFemale"),
        ["unbalanced_intercept"] = (MixedExamples.Unbalanced, "(Intercept),positionback,positionskill,day,positionback:day,positionskill:day"),
        ["unbalanced_intercept_ML"] = (MixedExamples.Unbalanced, "(Intercept),positionback,positionskill,day,positionback:day,positionskill:day"),
        ["unbalanced_slope"] = (MixedExamples.UnbalancedSlope, "(Intercept),positionback,positionskill,day,mass"),
        ["unbalanced_slope_ML"] = (MixedExamples.UnbalancedSlope, "(Intercept),positionback,positionskill,day,mass"),
        ["unbalanced_uncorrelated"] = (() => MixedExamples.UnbalancedSlope().Uncorrelated(), "(Intercept),positionback,positionskill,day,mass"),
        ["unbalanced_only"] = (MixedExamples.UnbalancedOnly, "(Intercept)"),
        ["boundary_intercept"] = (MixedExamples.Boundary, "(Intercept),day"),
        ["boundary_slope"] = (MixedExamples.BoundarySlope, "(Intercept),day"),
        ["quadratic"] = (MixedExamples.Quadratic, "(Intercept),day,day2"),
        ["many"] = (MixedExamples.Many, "(Intercept),day"),
        ["many_ML"] = (MixedExamples.Many, "(Intercept),day"),
    };

    private static readonly ILookup<string, (string Quantity, double Value)> s_expected = Oracle.Rows("mixed-expected.csv")
        .ToLookup(r => r[0], r => (r[1], Oracle.Number(r[2])));

    public static TheoryData<string> Cases => [.. s_cases.Keys];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_figure_agrees_with_lme4(string name)
    {
        var (design, names) = s_cases[name];
        var ml = name.EndsWith("_ML", StringComparison.Ordinal);
        var model = design().Fit(ml ? LikelihoodCriterion.Ml : LikelihoodCriterion.Reml).Require();
        var actual = Figures(model, names.Split(','), ml);
        var missed = new List<string>();
        foreach (var (quantity, expected) in s_expected[name])
        {
            var allowed = Allowed(quantity) * Math.Max(Math.Abs(expected), quantity[0] == 'D' ? 1e-3 : 0);
            if (!(Math.Abs(actual[quantity] - expected) <= allowed))
                missed.Add(FormattableString.Invariant($"{quantity}: expected {expected:R}, got {actual[quantity]:R}"));
        }

        Assert.True(missed.Count == 0, string.Join('\n', missed));
        Assert.NotEmpty(s_expected[name]);
    }

    [Fact]
    public void Every_case_of_the_file_is_tested() => Assert.Equal([.. s_cases.Keys, "dye_profile"], s_expected.Select(g => g.Key));

    // A profile without splines in between.
    [Fact]
    public void Profile_limits_of_the_dyes_agree_with_the_closed_form()
    {
        var model = MixedExamples.Dyestuff().Fit(LikelihoodCriterion.Ml).Require();
        var expected = s_expected["dye_profile"].ToDictionary(r => r.Quantity, r => r.Value);
        var (sd, sigma) = (model.ProfileStandardDeviation(0), model.ProfileResidual());
        Oracle.Close(expected["sd_low"], sd.Low, 1e-7);
        Oracle.Close(expected["sd_high"], sd.High, 1e-7);
        Oracle.Close(expected["sigma_low"], sigma.Low, 1e-7);
        Oracle.Close(expected["sigma_high"], sigma.High, 1e-7);
    }

    private static double Allowed(string quantity) => quantity switch
    {
        _ when quantity.StartsWith("df_", StringComparison.Ordinal) => 1e-6,
        _ when quantity.StartsWith("p_", StringComparison.Ordinal) => 1e-5,
        "minus2logLik" or "AIC" or "BIC" => 1e-9,
        _ => 1e-6,
    };

    private static Dictionary<string, double> Figures(MixedModel model, string[] names, bool ml)
    {
        var figures = new Dictionary<string, double>
        {
            ["var_residual"] = model.ResidualVariance, ["minus2logLik"] = model.MinusTwoLogLikelihood, ["AIC"] = model.Aic, ["BIC"] = model.Bic,
        };
        Fixed(string.Empty, model.FixedEffects);
        if (!ml) Fixed("kr_", model.FixedEffectsBy(DegreesOfFreedomMethod.KenwardRoger));
        for (var i = 0; i < model.RandomCovariance!.Size; i++)
            for (var j = 0; j <= i; j++) figures[$"D{i + 1}{j + 1}"] = model.RandomCovariance[i, j];
        foreach (var group in model.Effects)
            for (var k = 0; k < group.Effects.Count; k++)
            {
                figures[$"blup_{group.Group}_{k + 1}"] = group.Effects[k].Value;
                figures[$"condsd_{group.Group}_{k + 1}"] = group.Effects[k].ConditionalStandardError;
                figures[$"fullsd_{group.Group}_{k + 1}"] = group.Effects[k].PredictionStandardError;
            }

        return figures;

        void Fixed(string prefix, IReadOnlyList<FixedEffect> effects)
        {
            for (var j = 0; j < names.Length; j++)
            {
                var (name, effect) = (names[j], effects.Single(e => Plain(e.Name) == Plain(names[j])));
                (figures[$"{prefix}beta_{name}"], figures[$"{prefix}se_{name}"]) = (effect.Value, effect.StandardError);
                (figures[$"{prefix}df_{name}"], figures[$"{prefix}p_{name}"]) = (effect.DegreesOfFreedom, effect.P);
            }
        }
    }

    // R writes positionback:day where the library writes position: back × day.
    private static string Plain(string name) => name.Replace(": ", "", StringComparison.Ordinal).Replace(" × ", ":", StringComparison.Ordinal);
}
