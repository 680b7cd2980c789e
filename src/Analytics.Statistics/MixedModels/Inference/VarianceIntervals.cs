using Analytics.Statistics.Distributions;
using Analytics.Statistics.MixedModels.Criterion;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>Variances with intervals that are normal on the logarithm of the standard deviation (delta method).</summary>
internal static class VarianceIntervals
{
    public const string Residual = "residual";

    public static IReadOnlyList<VarianceComponent> Of(MixedModel model, double level)
    {
        var (state, information) = (model.State, model.Contrasts.Information);
        var (q, n) = (state.Q, state.Map.Count + 1);
        var z = NormalLaw.TwoSided(level);
        var parts = new List<VarianceComponent>();
        // ∂D/∂η in the units of the data, one matrix an η.
        var slopes = information.Jacobian.Select(j => state.Random.ToEffectCovariance(Square(j, q))).ToArray();
        var d = q == 0 ? [] : state.Random.ToEffectCovariance(state.Map.Covariance(state.Eta));
        for (var k = 0; k < q; k++)
        {
            var variance = model.RandomCovariance![k, k];
            var gradient = new double[n];
            for (var i = 0; i < n - 1; i++) gradient[i] = slopes[i][(k * q) + k] / (2 * d[(k * q) + k]);
            gradient[n - 1] = 0.5;
            parts.Add(Part(model.Design.RandomNames[k], variance, variance > 0 ? Math.Sqrt(2 * information.Form(gradient)) : null));
        }

        var last = new double[n];
        last[n - 1] = 0.5;
        parts.Add(Part(Residual, model.ResidualVariance, Math.Sqrt(2 * information.Form(last))));
        return parts;

        VarianceComponent Part(string name, double variance, double? error)
        {
            var sd = Math.Sqrt(variance);
            return new(name, variance, sd, error is { } e ? new(sd * Math.Exp(-z * e), sd * Math.Exp(z * e), level) : null);
        }
    }

    private static double[] Square(double[] entries, int q)
    {
        var m = new double[q * q];
        for (var i = 0; i < q; i++)
            for (var j = 0; j < q; j++) m[(i * q) + j] = entries[RandomPairs.Index(i, j)];
        return m;
    }
}
