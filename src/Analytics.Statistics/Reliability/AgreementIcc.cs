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
        // They are taken at a correlation of 0 when the estimate lies below it: there they would fall toward 0 and the interval would miss the estimate.
        var at = Math.Max(r, 0);
        var mix = n * (1 + (k - 1) * at) - k * at;
        var v = (k - 1) * (n - 1) * Math.Pow(k * at * j + mix * e, 2)
            / ((n - 1) * k * k * at * at * j * j + mix * mix * e * e);
        var upper = FisherLaw.Quantile((1 + level) / 2, n - 1, v);
        var lower = FisherLaw.Quantile((1 + level) / 2, v, n - 1);
        return (r, new(
            n * (b - upper * e) / (upper * (k * j + (k * n - k - n) * e) + n * b),
            n * (lower * b - e) / (k * j + (k * n - k - n) * e + n * lower * b),
            level), v);
    }
}
