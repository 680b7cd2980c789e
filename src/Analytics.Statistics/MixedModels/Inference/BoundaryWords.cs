using Analytics.Statistics.Fitting;
using Analytics.Statistics.MixedModels.Algebra;
using Analytics.Statistics.MixedModels.Criterion;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>The covariance of the random effects in the units of the data, and in words what of it lies on the boundary.</summary>
internal static class BoundaryWords
{
    // A relative standard deviation below this is a search that ran into 0.
    private const double Zero = 1e-5;

    public static (SymmetricMatrix? Covariance, IReadOnlyList<string> Words) Of(FitState state)
    {
        var q = state.Q;
        if (q == 0) return (null, []);
        var relative = state.Map.Covariance(state.Eta);
        var names = state.Design.RandomNames;
        var d = state.Random.ToEffectCovariance(relative);
        var gone = new bool[q];
        for (var k = 0; k < q; k++)
        {
            // In units of the residual: how far the effect moves a typical row.
            var size = 0.0;
            for (var i = 0; i <= k; i++) size += state.Random.W[(i * q) + k] * state.Random.W[(i * q) + k];
            gone[k] = d[(k * q) + k] * size < Zero * Zero;
        }

        var words = Enumerable.Range(0, q).Where(k => gone[k])
            .Select(k => $"The variance of '{names[k]}' between {state.Design.GroupName}s is 0: the data show no more difference than error explains.").ToList();
        if (words.Count == 0 && q > 1 && SymmetricEigen.Of(relative, q).Values.Min() < Zero * Zero)
        {
            words.Add(q == 2
                ? $"The correlation of '{names[0]}' and '{names[1]}' is {(d[1] > 0 ? "1" : "−1")}: the data cannot tell the two apart. Hold it at 0 or use one random effect."
                : $"The covariance of the random effects ({string.Join(", ", names)}) is singular: one combination of them has no variance. Use fewer.");
        }

        var unit = state.Variance * state.Scale * state.Scale;
        return (SymmetricMatrix.From(q, (i, j) => gone[i] || gone[j] ? 0 : unit * d[(i * q) + j]), words);
    }
}
