namespace Analytics.Statistics.Reliability;

/// <summary>Typical error as a percentage, for tests whose error grows with the value; found through logarithms.</summary>
/// <remarks>Formulas: 100 (exp(TE of ln x) − 1) [hopkins2000], and for a log-normal law exactly 100 √(exp(TE²) − 1).</remarks>
public sealed record CoefficientOfVariation
{
    private CoefficientOfVariation(TypicalError logError) => LogError = logError;

    /// <summary>Typical error of the natural logarithms, no unit.</summary>
    public TypicalError LogError { get; }

    /// <summary>Coefficient of variation, percent.</summary>
    public double Percent => ToPercent(LogError.Value);

    /// <summary>Standard deviation over mean of a log-normal law with this log error, percent; slightly below <see cref="Percent"/>.</summary>
    public double LogNormalPercent => 100 * Math.Sqrt(Math.Exp(LogError.Value * LogError.Value) - 1);

    /// <summary>Times/divide factor exp(TE of ln x).</summary>
    public double Factor => Math.Exp(LogError.Value);

    /// <summary>Interval of <see cref="Percent"/>, percent.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Interval Interval(double level = 0.95)
    {
        var log = LogError.Interval(level);
        return new(ToPercent(log.Low), ToPercent(log.High), level);
    }

    /// <summary>From trials taken in the same order by every athlete; see <see cref="TypicalErrors.FromTrials"/>.</summary>
    /// <param name="table">Athletes × trials, every value above 0.</param>
    public static CoefficientOfVariation FromTrials(TrialTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return new(TypicalErrors.FromTrials(table.Select(v => v > 0
            ? Math.Log(v)
            : throw new ArgumentException(FormattableString.Invariant($"A trial is {v}; a percentage error needs values above 0."), nameof(table)))));
    }

    private static double ToPercent(double logError) => 100 * (Math.Exp(logError) - 1);
}
