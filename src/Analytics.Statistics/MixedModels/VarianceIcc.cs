using Analytics.Statistics.MixedModels.Criterion;
using Analytics.Statistics.MixedModels.Inference;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.MixedModels;

/// <summary>
/// Intraclass correlation from the variances of a model with a random intercept, σ_b²/(σ_b² + σ²): for trials that are missing here and there.
/// Of complete tables a model with trial as a factor gives ICC(3,1), one with the intercept alone ICC(1,1), both never below 0 [shroutfleiss1979].
/// </summary>
/// <param name="Value">The estimate, 0 to 1.</param>
/// <param name="Interval">Profile-likelihood interval.</param>
/// <param name="Between">Variance between groups.</param>
/// <param name="Residual">Residual variance.</param>
/// <param name="Rows">Rows used.</param>
/// <param name="Groups">Groups (athletes).</param>
/// <param name="GroupName">What a group is called.</param>
public sealed record VarianceIcc(double Value, Interval Interval, double Between, double Residual, int Rows, int Groups, string GroupName) : Result
{
    /// <summary>The correlation of a fitted model.</summary>
    /// <param name="model">A model whose only random effect is the intercept; REML for the usual estimate.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static VarianceIcc Of(MixedModel model, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(model);
        Require.Share(level, nameof(level));
        if (model.Design.RandomNames is not [ModelDesign.InterceptName])
        {
            throw new ArgumentException(
                $"The random effects are {(model.State.Q == 0 ? "none" : string.Join(", ", model.Design.RandomNames))}; an intraclass correlation needs the intercept and no other, else it differs from point to point.", nameof(model));
        }

        var state = model.State;
        var (between, residual) = (model.RandomCovariance![0, 0], model.ResidualVariance);
        var objective = new ProfiledObjective(new VarianceCriterion(state.Criterion.Data), state.Map, state.Reml);
        var theta = between > 0 ? Math.Abs(state.Eta[0]) : 0;
        var limits = ProfileLimits.Of(t => objective.Value([t]), objective.Value([theta]), theta, Math.Max(theta / 2, 0.05), (0, double.PositiveInfinity), level);
        return new(between / (between + residual), new(Share(limits.Low), Share(limits.High), level), between, residual, model.Rows, model.Groups, model.Design.GroupName);

        double Share(double t)
        {
            var relative = t / state.Random.W[0] * (t / state.Random.W[0]);
            return double.IsPositiveInfinity(relative) ? 1 : relative / (1 + relative);
        }
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Intraclass correlation from variances", "σ_b²/(σ_b² + σ²) of a mixed model, profile-likelihood interval [bates2015]",
    [
        new("ICC", Value) { Interval = Interval },
        new($"SD between {GroupName}s", Math.Sqrt(Between)),
        new("SD within (typical error)", Math.Sqrt(Residual)),
    ])
    {
        Basis = $"{Rows} rows of {Groups} {GroupName}s",
        Remarks = ["It depends on who was tested as much as on the test; compare tests by typical error."],
    };
}
