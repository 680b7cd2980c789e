using Analytics.Statistics.Results;

namespace Analytics.Statistics.Reliability;

/// <summary>Typical error as a percentage, for tests whose error grows with the value; found through logarithms.</summary>
/// <remarks>Formulas: 100 (exp(TE of ln x) − 1) [hopkins2000], and for a log-normal law exactly 100 √(exp(TE²) − 1).</remarks>
public sealed record CoefficientOfVariation : Result
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
        => new(TypicalErrors.FromTrials(Logs(table)));

    /// <summary>From attempts whose order means nothing; see <see cref="TypicalErrors.FromAttempts"/>.</summary>
    /// <param name="attempts">One list an athlete, every value above 0.</param>
    public static CoefficientOfVariation FromAttempts(IReadOnlyList<IReadOnlyList<double>> attempts)
    {
        ArgumentNullException.ThrowIfNull(attempts);
        return new(TypicalErrors.FromAttempts([.. attempts.Select(a => (IReadOnlyList<double>)[.. a.Select(v => Log(v, nameof(attempts)))])]));
    }

    /// <summary>Changes that an unchanged athlete stays between, percent: 100 (exp(±√2 t TE of ln x) − 1). The upper one is the larger.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Interval DetectableChange(double level = 0.95)
    {
        var log = LogError.DetectableChange(level);
        return new(ToPercent(-log), ToPercent(log), level);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet()
    {
        var change = DetectableChange();
        return new(
            "Typical error in per cent", $"{LogError.Method}, on logarithms [hopkins2000]",
            [
                new("coefficient of variation", Percent, "%") { Interval = Interval(), DegreesOfFreedom = LogError.DegreesOfFreedom },
                new("the same, 90 % interval", Percent, "%") { Interval = Interval(0.90) },
                new("times/divide factor", Factor),
                new("SD over mean of a log-normal law", LogNormalPercent, "%"),
                new("detectable rise", change.High, "%") { Note = "95 %" },
                new("detectable fall", change.Low, "%") { Note = "95 %" },
            ])
        { Basis = LogError.Sheet().Basis, Remarks = LogError.Sheet().Remarks };
    }

    internal static TrialTable Logs(TrialTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return table.Select(v => Log(v, nameof(table)));
    }

    private static double Log(double v, string name) => v > 0
        ? Math.Log(v)
        : throw new ArgumentException(FormattableString.Invariant($"A trial is {v}; a percentage error needs values above 0."), name);

    internal static double ToPercent(double logError) => 100 * (Math.Exp(logError) - 1);
}
