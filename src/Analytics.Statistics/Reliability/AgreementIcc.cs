using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Reliability;

/// <summary>ICC(2,1), absolute agreement, with the interval of Shrout and Fleiss through Satterthwaite's degrees of freedom.</summary>
internal static class AgreementIcc
{
    public static (double Single, Interval Interval, double Df) Of(MeanSquares ms, double level)
    {
        double n = ms.Athletes, k = ms.Trials, b = ms.BetweenAthletes, j = ms.BetweenTrials, e = ms.Residual;
        var r = (b - e) / (b + (k - 1) * e + k * (j - e) / n);
        if (e <= 0 && j <= 0) return (r, new(1, 1, level), ms.DfResidual);

        // Multiplied through by the residual mean square, so that it may be 0. The degrees of freedom are not rounded.
        var mix = n * (1 + (k - 1) * r) - k * r;
        var v = (k - 1) * (n - 1) * Math.Pow(k * r * j + mix * e, 2)
            / ((n - 1) * k * k * r * r * j * j + mix * mix * e * e);
        var upper = FisherLaw.Quantile((1 + level) / 2, n - 1, v);
        var lower = FisherLaw.Quantile((1 + level) / 2, v, n - 1);
        return (r, new(
            n * (b - upper * e) / (upper * (k * j + (k * n - k - n) * e) + n * b),
            n * (lower * b - e) / (k * j + (k * n - k - n) * e + n * lower * b),
            level), v);
    }
}
