using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Trends;

/// <summary>How alike successive values are once the trend is taken off, and what that does to a test of trend.</summary>
/// <remarks>
/// Values a week apart carry over: a test that takes them as independent finds trends that are not there. The rates are measured ones, of
/// first-order autoregressive series without trend, 20,000 a cell, standard error at most 0.0033 (tests/oracles/statistics, section 16).
/// </remarks>
/// <param name="LagOne">Correlation of each residual with the one before.</param>
/// <param name="N">Values.</param>
public sealed record SerialCorrelation(double LagOne, int N)
{
    // Our choice: from here on the false-trend rate is nearly twice the nominal one.
    private const double Noteworthy = 0.2;

    /// <summary>
    /// Lag-one correlation with its bias taken off, (n r + 2)/(n − 4): a line fitted to a short series takes some of it away
    /// [hamed2009]. Kept between 0 and 0.95; null below 8 values.
    /// </summary>
    public double? Corrected => N >= 8 ? Math.Clamp((N * LagOne + 2) / (N - 4), 0, 0.95) : null;

    /// <summary>How often a Mann–Kendall test at a nominal 5 % flags a series like this without trend; null below 8 values.</summary>
    public double? FalseTrendRate => Corrected is { } phi ? FalseTrendRates.MannKendall(phi, N) : null;

    /// <summary>The same for the t test of a least-squares slope.</summary>
    public double? FalseTrendRateLeastSquares => Corrected is { } phi ? FalseTrendRates.LeastSquares(phi, N) : null;

    /// <summary>Warning in words; empty when there is nothing to warn of.</summary>
    public IReadOnlyList<string> Remarks
    {
        get
        {
            if (Corrected is not { } phi) return [FormattableString.Invariant($"{N} values are too few to see whether successive values are alike; a test of trend assumes they are not.")];
            if (phi < Noteworthy) return [];
            var more = phi > FalseTrendRates.Largest ? "more than" : "about";
            return
            [
                FormattableString.Invariant($"Successive values are alike: lag-1 correlation {LagOne:0.00} after the trend is taken off, {phi:0.00} with the bias of a short series corrected.")
                + FormattableString.Invariant($" Of such series without any trend {more} {100 * FalseTrendRate!.Value:0} % are flagged by a rank test at a nominal 5 %, and {more} {100 * FalseTrendRateLeastSquares!.Value:0} % by least squares. Use the p corrected for it."),
            ];
        }
    }

    /// <summary>From residuals in the order of x; null when x does not ascend or nothing is left over beyond rounding.</summary>
    internal static SerialCorrelation? OfResiduals(IReadOnlyList<double> x, IReadOnlyList<double> residuals, IReadOnlyList<double> y)
    {
        for (var i = 1; i < x.Count; i++)
        {
            if (x[i] < x[i - 1]) return null;
        }

        var noise = 1e-12 * Math.Max(y.Max(Math.Abs), residuals.Max(Math.Abs));
        return x.Count > 2 && residuals.Max() - residuals.Min() > noise ? new(Moments.LagOneAutocorrelation(residuals), x.Count) : null;
    }
}
