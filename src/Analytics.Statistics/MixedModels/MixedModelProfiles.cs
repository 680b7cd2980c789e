using Analytics.Statistics.MixedModels.Criterion;
using Analytics.Statistics.MixedModels.Inference;

namespace Analytics.Statistics.MixedModels;

/// <summary>
/// Profile-likelihood intervals: all values that the likelihood, everything else at its best, does not reject. Not symmetric, and valid
/// close to 0, where a limit is 0 itself when the data do not exclude it. Source: [bates2015, section 5.1].
/// </summary>
public static class MixedModelProfiles
{
    /// <summary>Interval of the residual standard deviation, by the likelihood the model was fitted with.</summary>
    /// <param name="model">The model.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static Interval ProfileResidual(this MixedModel model, double level = 0.95)
    {
        Check(model, level);
        var (fits, sigma) = (new ConstrainedFits(model.State), Math.Sqrt(model.ResidualVariance));
        var by = fits.ByResidual();
        return ProfileLimits.Of(s => s > 0 ? by(s) : double.PositiveInfinity, fits.Best, sigma, sigma / Math.Sqrt(model.State.Nu) * 1.5, (0, double.PositiveInfinity), level);
    }

    /// <summary>Interval of the standard deviation of a random effect, by the likelihood the model was fitted with.</summary>
    /// <param name="model">The model.</param>
    /// <param name="effect">Position among <see cref="ModelDesign.RandomNames"/>, from 0.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static Interval ProfileStandardDeviation(this MixedModel model, int effect, double level = 0.95)
    {
        Check(model, level);
        Position(effect, model.State.Q, nameof(effect));
        var (fits, sd) = (new ConstrainedFits(model.State), model.Variances[effect].StandardDeviation);
        var spread = sd > 0 ? sd / 2 : EffectUnit(model, effect) / 4;
        return ProfileLimits.Of(fits.ByStandardDeviation(effect), fits.Best, sd, spread, (0, double.PositiveInfinity), level);
    }

    /// <summary>Interval of the correlation of two random effects, by the likelihood the model was fitted with.</summary>
    /// <param name="model">A model whose random effects may correlate and both vary.</param>
    /// <param name="first">Position of one, from 0.</param>
    /// <param name="second">Position of the other.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static Interval ProfileCorrelation(this MixedModel model, int first, int second, double level = 0.95)
    {
        Check(model, level);
        Position(first, model.State.Q, nameof(first));
        Position(second, model.State.Q, nameof(second));
        if (first == second || !model.Design.IsCorrelated || model.RandomCorrelation(first, second) is not { } estimate)
            throw new InvalidOperationException("The model has no such correlation: it is held at 0, or one of the effects does not vary.");
        var fits = new ConstrainedFits(model.State);
        return ProfileLimits.Of(fits.ByCorrelation(first, second), fits.Best, estimate, 0.2, (-1, 1), level);
    }

    /// <summary>Interval of a fixed effect. Needs an ML fit: restricted likelihoods of different fixed effects do not compare.</summary>
    /// <param name="model">A model fitted by ML.</param>
    /// <param name="column">Position among <see cref="ModelDesign.FixedNames"/>, from 0.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static Interval ProfileFixedEffect(this MixedModel model, int column, double level = 0.95)
    {
        Check(model, level);
        Position(column, model.State.P, nameof(column));
        if (model.State.Reml)
            throw new InvalidOperationException("A profile of a fixed effect needs an ML fit; this is a REML fit. Use the t interval of FixedEffects, or fit by ML.");
        var fits = new ConstrainedFits(model.State);
        var (estimate, error) = (model.Coefficients[column], Math.Sqrt(model.FixedCovariance[column, column]));
        return ProfileLimits.Of(fits.ByFixedEffect(column), fits.Best, estimate, 2 * error, (double.NegativeInfinity, double.PositiveInfinity), level);
    }

    // The standard deviation at which an effect moves a typical row by one residual SD.
    internal static double EffectUnit(MixedModel model, int effect)
    {
        var (state, size) = (model.State, 0.0);
        for (var i = 0; i <= effect; i++) size += Math.Pow(state.Random.W[(i * state.Q) + effect], 2);
        return Math.Sqrt(model.ResidualVariance / size);
    }

    private static void Check(MixedModel model, double level)
    {
        ArgumentNullException.ThrowIfNull(model);
        Require.Share(level, nameof(level));
    }

    private static void Position(int value, int count, string name)
    {
        if (value < 0 || value >= count) throw new ArgumentOutOfRangeException(name, value, $"{name} is {value}; allowed: 0 to {count - 1}.");
    }
}
