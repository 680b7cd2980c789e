using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Change;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Profile;

/// <summary>What is known about the error of a metric's day value (best or mean of the attempts, not of a single attempt).</summary>
public sealed record MetricReliability
{
    /// <summary>The metric.</summary>
    public required Metric Metric { get; init; }

    /// <summary>Where the error comes from.</summary>
    public required ErrorSource Source { get; init; }

    /// <summary>Whether the error is a number of units or a share of the value.</summary>
    public required ErrorScale Scale { get; init; }

    /// <summary>The typical error: in the metric's unit when constant, as a share of the value (0.04 for 4 %) when proportional; null when nothing is known.</summary>
    public required TypicalError? Error { get; init; }

    /// <summary>Where it comes from, in words a report can print.</summary>
    public required string Basis { get; init; }

    /// <summary>What to bear in mind, in words a report can print; empty when nothing.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Key into docs/references.md of a published error; else null.</summary>
    public string? SourceKey { get; init; }

    /// <summary>ICC(3,1) of the retest days; null when they are not the source or hold no spread.</summary>
    public IntraclassCorrelation? Consistency { get; init; }

    /// <summary>Mean change over the retest days (learning, or tiredness), which is not counted as error; null when they are not the source.</summary>
    public MeanChange? Shift { get; init; }

    /// <summary>Whether the error holds day-to-day variation, so that verdicts on changes may rest on it.</summary>
    public bool HoldsDayToDayVariation => Source is ErrorSource.SeasonRetest or ErrorSource.PublishedStudy;

    /// <summary>
    /// Whether the retest was of estimated values, so that the typical error holds what an equation gets wrong anew on each day
    /// (<see cref="EquationError.Fresh"/>) and it is not added again.
    /// </summary>
    public bool HoldsFreshEquationError { get; init; }

    /// <summary>Typical error at a level of the metric, in its unit; null when nothing is known.</summary>
    /// <param name="value">A value of the metric, in its unit.</param>
    public double? ErrorAt(double value) => Scale == ErrorScale.Proportional ? Error?.Value * Math.Abs(value) : Error?.Value;

    /// <summary>Degrees of freedom of the error; infinity for a published one whose number of athletes is not known, 0 when nothing is known.</summary>
    public double DegreesOfFreedom => Error?.DegreesOfFreedom ?? 0;

    /// <summary>
    /// Finds the best error there is: the season's own retest days when at least <paramref name="minimumRetested"/> athletes did both,
    /// else a published error, else same-day attempts, else none. What was passed over is told in <see cref="Cautions"/>.
    /// </summary>
    /// <param name="metric">The metric.</param>
    /// <param name="series">The scale the values are on.</param>
    /// <param name="retests">Retest days of the season; may be empty.</param>
    /// <param name="days">Testing days whose attempts may serve as a last resort.</param>
    /// <param name="minimumRetested">Fewest athletes for an error of the season's own.</param>
    public static MetricReliability Of(
        Metric metric, string? series, IReadOnlyList<RepeatDays> retests, IReadOnlyList<IReadOnlyList<AthleteDay>> days, int minimumRetested = 8)
    {
        ArgumentNullException.ThrowIfNull(metric);
        ArgumentNullException.ThrowIfNull(retests);
        ArgumentNullException.ThrowIfNull(days);
        return Of(metric, series, retests, cautions => SameDayError.Find(metric, series, days, cautions), minimumRetested);
    }

    /// <summary>The same with values of all testing days made already.</summary>
    internal static MetricReliability Of(SquadProfile profile, Metric metric, string? series, IEnumerable<DayValue> values)
        => Of(metric, series, profile.Retests, cautions => SameDayError.Find(metric, values, cautions), profile.MinimumRetested);

    private static MetricReliability Of(
        Metric metric, string? series, IReadOnlyList<RepeatDays> retests, Func<List<string>, MetricReliability?> sameDay, int minimumRetested)
    {
        var cautions = new List<string>();
        return RetestError.Find(metric, series, retests, minimumRetested, cautions)
            ?? Published(metric, series, cautions)
            ?? sameDay(cautions)
            ?? new()
            {
                Metric = metric,
                Source = ErrorSource.None,
                Scale = ErrorScale.Constant,
                Error = null,
                Basis = "no error known: no retest days, no published error, no repeated attempts",
                Cautions = cautions,
            };
    }

    private static MetricReliability? Published(Metric metric, string? series, List<string> cautions)
    {
        if (metric.PublishedError is not { } published) return null;
        if (published.Series is { } studied && series?.StartsWith(studied, StringComparison.Ordinal) != true)
        {
            cautions.Add($"The published error [{published.SourceKey}] is for {studied} measurement and does not hold here.");
            return null;
        }

        var share = published.Percent / 100;
        if ((share ?? published.Absolute) is not { } value) return null;
        return new()
        {
            Metric = metric,
            Source = ErrorSource.PublishedStudy,
            Scale = share.HasValue ? ErrorScale.Proportional : ErrorScale.Constant,
            Error = TypicalError.Known(value, "published", published.Athletes - 1 ?? double.PositiveInfinity),
            Basis = $"published error [{published.SourceKey}]",
            SourceKey = published.SourceKey,
            Cautions = [.. cautions, "Another group's error: test this squad twice in one week to have its own."],
        };
    }
}
