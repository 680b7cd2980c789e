using Analytics.Statistics.Fitting;
using Analytics.Statistics.MixedModels.Criterion;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>σ² (X'V₀⁻¹X)⁻¹ in the units of the data.</summary>
internal static class FixedEffectCovariance
{
    public static SymmetricMatrix Of(FitState state)
    {
        var (p, unit) = (state.P, state.Scale * Math.Sqrt(state.Variance));
        var factor = new double[p * p];
        for (var j = 0; j < p; j++)
        {
            var weights = new double[p];
            weights[j] = unit;
            state.White(weights).CopyTo(factor, j * p);
        }

        return SymmetricMatrix.OfFactor(p, factor);
    }
}
