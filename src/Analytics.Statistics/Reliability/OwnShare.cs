using Analytics.Statistics.Resampling;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Reliability;

/// <summary>
/// What a test says that others do not: the share of its lasting differences between athletes that a linear rule of one or two other tests does not give. Lasting is
/// what returns on a second occasion, so neither the error of the test nor that of the others passes for something new.
/// </summary>
/// <remarks>
/// With e the remainder of y after least squares on the others (coefficients from the means of both occasions), the share is cov(e₁, e₂)/cov(y₁, y₂), corrected for
/// the coefficients taken from the same athletes. Errors of the others leave a little of a quality seen twice: with a reliability r of the mean of two
/// occasions about (1 − r)² of it. The figure is our own, no source. Interval: athletes drawn anew, percentiles [efrontibshirani1993]; it supposes that the others were named
/// beforehand. Where they were chosen among many on the same athletes the share reads low and the interval holds the truth less often, see docs/bench-study.md.
/// </remarks>
public sealed record OwnShare : Result
{
    private OwnShare()
    {
    }

    /// <summary>The share, 0 to 1; null when nothing of the test itself returns, so there is nothing to share out.</summary>
    public required double? Value { get; init; }

    /// <summary>Its interval; null without a share, or when too few resamples gave one.</summary>
    public required Interval? Interval { get; init; }

    /// <summary>
    /// Share of resamples in which something of the test returned, 0 to 1; 0 where nothing does in the data. Near 1 it surely returns; else the share is one of an
    /// amount that may be none, and its interval, which leaves those resamples out, must not be believed.
    /// </summary>
    public required double Returns { get; init; }

    /// <summary>Correlation of the remainders of the two occasions: how well what remains repeats; null when nothing remains.</summary>
    public required double? RemainderRepeats { get; init; }

    /// <summary>Share of the variance of the mean of both occasions that the others give, 0 to 1, corrected for their number.</summary>
    public required double FromOthers { get; init; }

    /// <summary>Athletes.</summary>
    public required int N { get; init; }

    /// <summary>Other tests used.</summary>
    public required int Others { get; init; }

    /// <summary>The share with each athlete left out in turn; null where there is none.</summary>
    public required IReadOnlyList<double?> LeaveOneOut { get; init; }

    /// <summary>Computes it.</summary>
    /// <param name="test">The test on two occasions: 2 columns of one value an athlete.</param>
    /// <param name="others">One or two other tests, each as 2 columns in the same order of athletes.</param>
    /// <param name="groups">Groups whose means were taken off all columns; 1 when none were.</param>
    /// <param name="options">Resamples and seed; level is 95 %.</param>
    /// <exception cref="ArgumentException">Columns of unlike length, not one or two others, no group, or fewer than 3 athletes more than groups and others.</exception>
    public static OwnShare Of(OccasionPair test, IReadOnlyList<OccasionPair> others, int groups = 1, BootstrapOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(test);
        ArgumentNullException.ThrowIfNull(others);
        if (others.Count is not (1 or 2)) throw new ArgumentException($"{others.Count} other tests; allowed: 1 or 2.", nameof(others));
        foreach (var other in others) ArgumentNullException.ThrowIfNull(other, nameof(others));
        Require.AtLeast(groups, 1, nameof(groups));
        if (others.Any(o => o.Count != test.Count)) throw new ArgumentException($"The columns hold {test.Count} and {others.First(o => o.Count != test.Count).Count} athletes; they must be the same athletes.", nameof(others));
        if (test.Count < groups + others.Count + 3)
            throw new ArgumentException($"{test.Count} athletes in {groups} groups; at least {groups + others.Count + 3} are needed.", nameof(test));
        var parts = new RemainderParts(test, others, groups);
        int[] all = [.. Enumerable.Range(0, test.Count)];
        var whole = parts.Of(all);
        // What does not exist cannot be resampled.
        var draws = whole.Share is null ? null : Bootstrap.OfRows(test.Count, rows => parts.Share(rows) ?? double.NaN, options ?? new() { Resamples = 2000 });
        return new()
        {
            Value = whole.Share,
            Interval = draws is null ? null : Limits(draws),
            Returns = draws is null ? 0 : (double)draws.Statistics.Count / (draws.Statistics.Count + draws.Undefined),
            RemainderRepeats = whole.Repeats,
            FromOthers = whole.FromOthers,
            N = test.Count,
            Others = others.Count,
            LeaveOneOut = [.. all.Select(one => parts.Share([.. all.Where(i => i != one)]))],
        };
    }

    // An exact copy has nothing of its own in any resample, and beside tests that do not vary everything is.
    private static Interval? Limits(BootstrapDistribution draws)
        => draws.Estimate is 0 or 1 && draws.Statistics.Count > 0 && draws.Statistics.All(s => s == draws.Estimate) ? new(draws.Estimate, draws.Estimate, 0.95) : draws.Interval(method: BootstrapMethod.Percentile).Limits;

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("What a test says that others do not", "lasting variance left by least squares on the others; interval by resampling of athletes [efrontibshirani1993]",
    [
        new("share of its own", Value) { Interval = Interval, Note = Value is null ? "nothing of the test itself returns on the second occasion" : string.Empty },
        new("correlation of what remains", RemainderRepeats) { Note = RemainderRepeats is null ? "nothing remains" : string.Empty },
        new("variance given by the others", FromOthers),
        new("resamples in which it returned", Returns),
    ]) { Basis = FormattableString.Invariant($"{N} athletes on two occasions, {Others} other {(Others == 1 ? "test" : "tests")}") };
}
