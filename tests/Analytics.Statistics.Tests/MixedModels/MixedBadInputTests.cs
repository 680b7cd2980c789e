using Analytics.Statistics.MixedModels;

namespace Analytics.Statistics.Tests.MixedModels;

/// <summary>Data that cannot answer end in words; arguments that make no sense are refused by name.</summary>
public sealed class MixedBadInputTests
{
    private static readonly string[] s_three = ["a", "a", "a", "b", "b", "b", "c", "c", "c"];
    private static readonly double[] s_day = [0, 1, 2, 0, 1, 2, 0, 1, 2];
    private static readonly double[] s_y = [1, 2.5, 3, 4, 4.2, 5.9, 7, 8.8, 9];

    public static TheoryData<string, MixedEnding, string> Cases => new()
    {
        { "one group", MixedEnding.TooFewGroups, "one athlete only ('a')" },
        { "one row a group", MixedEnding.MoreEffectsThanRows, "No athlete has more than 1 row" },
        { "as many effects as rows", MixedEnding.MoreEffectsThanRows, "No athlete has more than 3 rows; with 3 random effects" },
        { "all equal", MixedEnding.NoVariation, "All 9 values of jump are 7" },
        { "exact line", MixedEnding.NoVariation, "to the last digit" },
        { "repeats agree", MixedEnding.NoErrorLeft, "Within every athlete" },
        { "no rows left", MixedEnding.TooFewRows, "2 rows for 2 fixed effects" },
        { "zero column", MixedEnding.CollinearFixedEffects, "'nothing' is 0 in every row" },
        { "collinear", MixedEnding.CollinearFixedEffects, "'twice' adds nothing: in these rows it is 1 × '(Intercept)' + 2 × 'day'" },
        { "constant slope", MixedEnding.CollinearRandomEffects, "'same' adds nothing" },
        { "a factor for each athlete", MixedEnding.NotIdentified, "how athletes differ in '(Intercept)'" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Too_little_data_ends_in_words(string what, MixedEnding ending, string words)
    {
        foreach (var criterion in Enum.GetValues<LikelihoodCriterion>())
        {
            var fit = Design(what).Fit(criterion);
            Assert.Equal(ending, fit.Ending);
            Assert.Contains(words, fit.Explanation, StringComparison.Ordinal);
            Assert.Null(fit.Model);
            Assert.Contains(fit.Explanation, fit.ToString(), StringComparison.Ordinal);
            Assert.Equal(fit.Explanation, Assert.Throws<InvalidOperationException>(fit.Require).Message);
        }
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_value_that_is_no_number_is_refused_with_its_place(double bad)
    {
        var values = (double[])s_y.Clone();
        values[4] = bad;
        Assert.Contains("[4]", Assert.Throws<ArgumentException>(() => ModelDesign.Of(values, s_three)).Message, StringComparison.Ordinal);
        Assert.Contains("speed[4]", Assert.Throws<ArgumentException>(() => ModelDesign.Of(s_y, s_three).Covariate("speed", values)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Wrong_arguments_name_themselves()
    {
        var design = ModelDesign.Of(s_y, s_three, "jump", "athlete").Covariate("day", s_day);
        Says("8 values for 9 rows", () => ModelDesign.Of(s_y, s_three[..8]));
        Says("[2] is empty", () => ModelDesign.Of(s_y[..3], ["a", "b", " "]));
        Says("'day' is in the design already", () => design.Covariate("day", s_day));
        Says("'week' is not in the design; there are: (Intercept), day", () => design.RandomSlope("week"));
        Says("'d' of 'team' is in no row", () => design.Factor("team", s_three, "d"));
        Says("is a factor", () => design.Factor("team", s_three).RandomSlope("team"));
        Says("at most 3", () => design.RandomIntercept().RandomSlope("x", s_y).RandomSlope("z", s_y).RandomSlope("day"));
        var model = design.RandomIntercept().Fit().Require();
        Says("3 weights for 2 fixed effects ((Intercept), day)", () => model.Contrast("x", [1, 0, 0]));
        Says("All weights of 'x' are 0", () => model.Contrast("x", [0, 0]));
        Says("covariate 'day'", () => model.MeanAt("x", new()));
        Says("'z' is not among the 3 athletes", () => model.Predict(new ModelPoint().With("day", 1), "z"));
        Says("level is 1", () => model.ProfileResidual(1));
        Says("needs the intercept and no other", () => VarianceIcc.Of(design.RandomSlope("day").Fit().Require()));
        Assert.Contains("needs an ML fit", Assert.Throws<InvalidOperationException>(() => model.ProfileFixedEffect(0)).Message, StringComparison.Ordinal);
        var ml = design.RandomIntercept().Fit(LikelihoodCriterion.Ml).Require();
        Assert.Contains("need a REML fit", Assert.Throws<InvalidOperationException>(() => ml.FixedEffectsBy(DegreesOfFreedomMethod.KenwardRoger)).Message, StringComparison.Ordinal);

        static void Says(string words, Func<object?> act)
            => Assert.Contains(words, Assert.ThrowsAny<ArgumentException>(() => act()).Message, StringComparison.Ordinal);
    }

    private static ModelDesign Design(string what)
    {
        ModelDesign Of(double[] y, string[] groups) => ModelDesign.Of(y, groups, "jump", "athlete");
        return what switch
        {
            "one group" => Of(s_y, [.. Enumerable.Repeat("a", 9)]).RandomIntercept(),
            "one row a group" => Of(s_y, [.. Enumerable.Range(0, 9).Select(i => $"a{i}")]).RandomIntercept(),
            "as many effects as rows" => Of(s_y, s_three).RandomIntercept().RandomSlope("day", s_day).RandomSlope("square", [.. s_day.Select(d => d * d)]),
            "all equal" => Of([.. Enumerable.Repeat(7.0, 9)], s_three).RandomIntercept(),
            "exact line" => Of([.. s_day.Select(d => 0.1 + (0.3 * d))], s_three).Covariate("day", s_day).RandomIntercept(),
            "repeats agree" => Of([1.1, 1.1, 1.1, 2.3, 2.3, 2.3, 2.9, 2.9, 2.9], s_three).RandomIntercept(),
            "no rows left" => Of([1, 2], ["a", "b"]).Covariate("day", [0, 1]).RandomIntercept(),
            "zero column" => Of(s_y, s_three).Covariate("nothing", new double[9]).RandomIntercept(),
            "collinear" => Of(s_y, s_three).Covariate("day", s_day).Covariate("twice", [.. s_day.Select(d => 1 + (2 * d))]).RandomIntercept(),
            "constant slope" => Of(s_y, s_three).RandomIntercept().RandomSlope("same", [.. Enumerable.Repeat(4.0, 9)]),
            "a factor for each athlete" => Of(s_y, s_three).Factor("name", s_three).RandomIntercept(),
            _ => throw new ArgumentOutOfRangeException(nameof(what), what, "Unknown case."),
        };
    }
}
