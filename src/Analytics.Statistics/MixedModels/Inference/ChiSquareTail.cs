using MathNet.Numerics;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>P(X &gt; x) of the chi-square law without the cancellation of 1 − P(X ≤ x).</summary>
internal static class ChiSquareTail
{
    public static double Of(double x, int df) => x <= 0 ? 1 : SpecialFunctions.GammaUpperRegularized(df / 2.0, x / 2);
}
