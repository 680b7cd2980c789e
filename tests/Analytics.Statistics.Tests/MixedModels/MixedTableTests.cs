using Analytics.Statistics.MixedModels;

namespace Analytics.Statistics.Tests.MixedModels;

/// <summary>Tables of predicted random effects, by the closed forms of balanced data.</summary>
public sealed class MixedTableTests
{
    [Theory]
    [InlineData("dye-reml", false, 1)]
    [InlineData("dye-ml", true, 1)]
    [InlineData("sleep-ri-reml", false, 1)]
    [InlineData("sleep-ris-reml", false, 2)]
    [InlineData("sleep-ris-ml", true, 2)]
    public void Effects_of_every_group_agree(string table, bool ml, int effects)
    {
        var design = table[0] == 'd' ? MixedExamples.Dyestuff() : effects == 1 ? MixedExamples.SleepIntercept() : MixedExamples.SleepSlope();
        var model = design.Fit(ml ? LikelihoodCriterion.Ml : LikelihoodCriterion.Reml).Require();
        var rows = Oracle.Rows($"mixed-blup-{table}.csv").ToList();
        Assert.Equal(rows.Select(r => r[0]), model.Effects.Select(e => e.Group));
        foreach (var (row, group) in rows.Zip(model.Effects))
            for (var k = 0; k < effects; k++)
            {
                Oracle.Close(Oracle.Number(row[1 + (2 * k)]), group.Effects[k].Value, 1e-9);
                Oracle.Close(Oracle.Number(row[2 + (2 * k)]), group.Effects[k].ConditionalStandardError, 1e-9);
            }
    }

    // Balanced data: degrees of freedom are whole numbers of the analysis of variance (Potthoff and Roy's children: 27 of them, 2 sexes, 4 ages).
    [Fact]
    public void Degrees_of_freedom_of_balanced_data_are_those_of_the_analysis_of_variance()
    {
        var slope = MixedExamples.Orthodont().RandomSlope("age").Fit().Require();
        foreach (var method in Enum.GetValues<DegreesOfFreedomMethod>())
            foreach (var effect in slope.FixedEffectsBy(method)) Oracle.Close(25, effect.DegreesOfFreedom, 1e-9);
        var level = MixedExamples.Orthodont().Fit().Require();
        Oracle.Close(79, level.FixedEffects[1].DegreesOfFreedom, 1e-9);
        Oracle.Close(5, MixedExamples.Dyestuff().Fit().Require().FixedEffects[0].DegreesOfFreedom, 1e-9);
    }

    // The error that knows of the fixed effects is the larger: one batch mean of the dyes, D(1 − shrinkage) + shrinkage² var(mean) (closed form).
    [Fact]
    public void The_prediction_error_holds_the_doubt_of_the_mean()
    {
        var effect = MixedExamples.Dyestuff().Fit().Require().Effects[0].Effects[0];
        Oracle.Close(Math.Sqrt((1764.05 * (1 - 0.7825267267000849)) + Math.Pow(0.7825267267000849 * 19.38341215231898, 2)), effect.PredictionStandardError, 1e-9);
        Assert.True(effect.PredictionStandardError > effect.ConditionalStandardError);
    }

    [Fact]
    public void Fitted_values_and_residuals_add_up_and_match_predictions()
    {
        var model = MixedExamples.UnbalancedSlope().Fit().Require();
        var rows = Oracle.Rows("mixed-unbalanced.csv").ToList();
        var (fitted, residuals) = (model.FittedValues(), model.Residuals());
        for (var i = 0; i < rows.Count; i++)
        {
            Oracle.Close(Oracle.Number(rows[i][4]), fitted[i] + residuals[i], 1e-12);
            var point = new ModelPoint().With("position", rows[i][1]).With("day", Oracle.Number(rows[i][2])).With("mass", Oracle.Number(rows[i][3]));
            Oracle.Close(fitted[i], model.Predict(point, rows[i][0]).Value, 1e-10);
        }
    }

    // A new athlete: variance of the mean at the point, of the effects there, and of the error (definition).
    [Fact]
    public void A_group_not_seen_before_gets_the_mean_and_all_the_spread()
    {
        var model = MixedExamples.SleepSlope().Fit().Require();
        var point = new ModelPoint().With("Days", 3);
        var mean = model.MeanAt("day 3", point);
        var prediction = model.Predict(point, null);
        var d = model.RandomCovariance!;
        var level = (mean.StandardError * mean.StandardError) + d[0, 0] + (6 * d[0, 1]) + (9 * d[1, 1]);
        Oracle.Close(251.4051048484848 + (3 * 10.46728595959597), prediction.Value, 1e-10);
        Oracle.Close(Math.Sqrt(level), prediction.StandardError, 1e-10);
        Oracle.Close(Math.Sqrt(level + model.ResidualVariance), prediction.NewValueStandardError, 1e-10);
        Assert.True(model.Predict(point, "308").StandardError < prediction.StandardError);
    }
}
