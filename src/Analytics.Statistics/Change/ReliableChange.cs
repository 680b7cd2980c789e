namespace Analytics.Statistics.Change;

/// <summary>Change figures from published summaries, where no repeat trials are at hand.</summary>
public static class ReliableChange
{
    /// <summary>Reliable change index (after − before)/(√2 SEM), SEM = SD √(1 − r) [jacobsontruax1991].</summary>
    /// <param name="before">Score before.</param>
    /// <param name="after">Score after.</param>
    /// <param name="standardDeviation">SD of scores, above 0.</param>
    /// <param name="reliability">Reliability, 0 to below 1.</param>
    public static double Index(double before, double after, double standardDeviation, double reliability)
        => ReliableChangeIndex.Of(before, after, standardDeviation, reliability).Value;

    /// <summary>
    /// Limits in percent that an unchanged athlete's change stays in when the error is log-normal:
    /// 100 (exp(± z √2 σ) − 1), σ = √ln(1 + CV²). Not symmetric: the fall is smaller than the rise.
    /// </summary>
    /// <param name="percent">Coefficient of variation of one test, percent, above 0.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static Interval PercentLimits(double percent, double level = 0.95) => LogNormalLimits.Of(percent, level).Limits;
}
