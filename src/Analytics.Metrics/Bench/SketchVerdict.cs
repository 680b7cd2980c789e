using Analytics.Statistics;

namespace Analytics.Metrics.Bench;

/// <summary>What can be said of a sketched metric, in words.</summary>
/// <param name="Kind">The verdict.</param>
/// <param name="Why">Why, in one plain sentence with figures that need no unit.</param>
/// <param name="DecidedBy">The verdict there would be without one player, when that is another; null when no single player decides.</param>
public sealed record SketchVerdict(BenchVerdict Kind, string Why, BenchVerdict? DecidedBy)
{
    /// <summary>The verdict in a few words.</summary>
    public string Words => Kind.Words();

    internal static SketchVerdict Of(int athletes, Repeatability repeats, LibraryOverlap? overlap, BenchRule rule) => Of(athletes, repeats, new Lazy<LibraryOverlap?>(overlap), rule);

    /// <summary>The verdict; the overlap is worked out only where it decides, since it costs most.</summary>
    internal static SketchVerdict Of(int athletes, Repeatability repeats, Lazy<LibraryOverlap?> overlap, BenchRule rule)
    {
        var (kind, why) = VerdictReason.Of(athletes, repeats, overlap, rule);
        // A player's part in both figures: the ICC without him, and his pull on the limits of the share.
        var without = repeats.LeaveOneOut.Select(icc => VerdictReason.Of(athletes, repeats with { Icc = icc, Athletes = repeats.Athletes - 1 }, overlap, rule).Kind)
            .Concat(kind is BenchVerdict.NoValues or BenchVerdict.Noise ? [] : WithoutOne(overlap.Value).Select(o => VerdictReason.Of(athletes, repeats, o, rule).Kind));
        var others = without.Where(k => k != kind).ToList();
        return new(kind, why, others.Count > 0 ? others[0] : null);
    }

    private static IEnumerable<LibraryOverlap> WithoutOne(LibraryOverlap? overlap)
        => overlap?.Own is { Value: { } share, Interval: { } limits } own
            ? own.LeaveOneOut.OfType<double>().Select(s => overlap with { Own = own with { Value = s, Interval = new(Limit(limits.Low, s - share), Limit(limits.High, s - share), limits.Level) } })
            : [];

    // A limit that lies at an end, where all is open, is not pulled off it by one player.
    private static double Limit(double limit, double by) => limit is <= 0 or >= 1 ? limit : Math.Clamp(limit + by, 0, 1);
}

/// <summary>Words of the verdicts.</summary>
public static class BenchVerdictWords
{
    /// <summary>What a coach reads.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Words(this BenchVerdict verdict) => verdict switch
    {
        BenchVerdict.NoValues => "too few values",
        BenchVerdict.Noise => "no more than noise",
        BenchVerdict.NothingNew => "nothing new",
        BenchVerdict.SaysSomethingNew => "says something new",
        _ => "cannot tell yet",
    };
}
