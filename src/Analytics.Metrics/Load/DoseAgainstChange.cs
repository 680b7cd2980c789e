using Analytics.Statistics;
using Analytics.Statistics.Association;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;
using Analytics.Statistics.Trends;

namespace Analytics.Metrics.Load;

/// <summary>
/// Dose of training set against change, one point an athlete: rank correlation and the median of all slopes. A description of who did more and who changed; it is no
/// evidence of cause, and no predictor of injury. Error in the changes pulls the correlation towards 0 and leaves the slope where it is, only less sure.
/// </summary>
public sealed record DoseAgainstChange : Result
{
    /// <summary>Fewest athletes for a figure: with fewer, a 95 % interval round a correlation of 0 is wider than −0.7 to 0.7 (a choice of this library).</summary>
    public const int LeastAthletes = 8;

    private DoseAgainstChange()
    {
    }

    /// <summary>What is set against what.</summary>
    public required DosePair Pair { get; init; }

    /// <summary>The athletes, by identifier.</summary>
    public required IReadOnlyList<DosePoint> Points { get; init; }

    /// <summary>Spearman's rank correlation; null where <see cref="NotComputable"/> says why.</summary>
    public Correlation? Rank { get; private init; }

    /// <summary>Theil and Sen's slope, units of the change per unit of the dose; null where <see cref="NotComputable"/> says why.</summary>
    public TheilSen? Slope { get; private init; }

    /// <summary>Difference in dose between the upper and the lower quartile of the athletes (type 7); null where <see cref="NotComputable"/> says why.</summary>
    public double? DoseSpread { get; private init; }

    /// <summary>Share of the variance of the changes that measurement error makes up, 0 to 1 and above when the errors given are larger than the scatter; null when an error is not known or all changes are equal.</summary>
    public double? ErrorShare { get; private init; }

    /// <summary>Why there is no figure, in words; null when there is.</summary>
    public string? NotComputable { get; private init; }

    /// <summary>What the result is and is not; printed with it, always.</summary>
    public string Description { get; } = LoadCautions.Description;

    /// <summary>Sets doses against changes.</summary>
    /// <param name="pair">The labels.</param>
    /// <param name="points">One point an athlete; leave out athletes whose dose or change is not known.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">An athlete twice, a value that is not finite, or an error of 0 or less.</exception>
    public static DoseAgainstChange Of(DosePair pair, IEnumerable<DosePoint> points, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(pair);
        ArgumentNullException.ThrowIfNull(points);
        if (level is not (> 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(level), level, FormattableString.Invariant($"level is {level}; allowed: above 0 and below 1."));
        var sorted = points.OrderBy(p => p.AthleteId, StringComparer.Ordinal).ToList();
        Check(sorted);
        double[] dose = [.. sorted.Select(p => p.Dose)], change = [.. sorted.Select(p => p.Change)];
        var empty = new DoseAgainstChange { Pair = pair, Points = sorted, ErrorShare = ShareOfError(sorted) };
        if (Trouble(pair, dose, change) is { } trouble) return empty with { NotComputable = trouble };
        return empty with
        {
            Rank = Correlation.Spearman(dose, change, level),
            Slope = TheilSen.Of(dose, change, level),
            DoseSpread = Quantiles.Type7(dose, 0.75) - Quantiles.Type7(dose, 0.25),
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new($"Dose against change: {Pair}", "Spearman's rank correlation [spearman1904; bonettwright2000]; slope by Theil and Sen [theil1950; sen1968]",
    [
        new("rank correlation", Rank?.Value) { Interval = Rank?.Interval, Note = NotComputable ?? string.Empty },
        new("p, before correction for the number of looks", Rank?.P),
        new("slope", Slope?.Slope, $"{Pair.ChangeUnit} per {(Pair.DoseUnit.Length > 0 ? Pair.DoseUnit : "one of dose")}".Trim()) { Interval = Slope?.Interval },
        .. DoseSpread is > 0
            ? [new ResultLine("slope over the middle half of the doses", Slope!.Slope * DoseSpread, Pair.ChangeUnit) { Interval = Slope.Interval?.Times(DoseSpread.Value), Note = FormattableString.Invariant($"{DoseSpread:0.##} {Pair.DoseUnit}").TrimEnd() }]
            : Array.Empty<ResultLine>(),
        new("measurement error in the variance of the changes", 100 * ErrorShare, "%") { Note = ErrorShare is null ? "no error known" : string.Empty },
    ])
    {
        Basis = $"{Points.Count} {(Points.Count == 1 ? "athlete" : "athletes")}",
        Remarks =
        [
            Description,
            .. ErrorShare switch
            {
                >= 1 => ["The changes scatter no more than measurement error alone makes them; no relation could be seen in them."],
                > 0.5 => ["More than half of the scatter of the changes is measurement error, which pulls the correlation towards 0."],
                _ => Array.Empty<string>(),
            },
        ],
    };

    private static void Check(List<DosePoint> points)
    {
        for (var i = 0; i < points.Count; i++)
        {
            var p = points[i];
            if (i > 0 && p.AthleteId == points[i - 1].AthleteId) throw new ArgumentException($"Athlete {p.AthleteId} stands in two points; one point an athlete.", nameof(points));
            if (!double.IsFinite(p.Dose) || !double.IsFinite(p.Change))
                throw new ArgumentException(FormattableString.Invariant($"Athlete {p.AthleteId} has dose {p.Dose} and change {p.Change}; both must be finite. Leave out who has none."), nameof(points));
            if (p.ChangeError is { } error && !(error > 0 && double.IsFinite(error)))
                throw new ArgumentException(FormattableString.Invariant($"The change of athlete {p.AthleteId} has the error {error}; it must be above 0, or null when not known."), nameof(points));
        }
    }

    private static string? Trouble(DosePair pair, double[] dose, double[] change)
    {
        if (dose.Length < LeastAthletes) return $"not computable: {dose.Length} {(dose.Length == 1 ? "athlete has" : "athletes have")} both dose and change; at least {LeastAthletes} are needed";
        if (dose.All(d => d.Equals(dose[0]))) return FormattableString.Invariant($"not computable: all {dose.Length} athletes have the same dose, {dose[0]:0.##} {pair.DoseUnit}").TrimEnd();
        if (change.All(c => c.Equals(change[0]))) return FormattableString.Invariant($"not computable: all {change.Length} athletes changed by the same, {change[0]:0.##} {pair.ChangeUnit}").TrimEnd();
        return null;
    }

    private static double? ShareOfError(List<DosePoint> points)
    {
        if (points.Count < LeastAthletes || points.Any(p => p.ChangeError is null)) return null;
        var variance = Moments.Variance([.. points.Select(p => p.Change)]);
        return variance > 0 ? points.Average(p => p.ChangeError!.Value * p.ChangeError.Value) / variance : null;
    }
}
