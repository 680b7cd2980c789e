using Analytics.Statistics.Results;

namespace Analytics.Statistics.Resampling;

/// <summary>Print of bootstrap results.</summary>
internal static class BootstrapSheet
{
    public static ResultSheet Of(BootstrapDistribution from) => new(
        "Bootstrap of the " + from.What, "resampling with replacement [efrontibshirani1993]", Lines(from)) { Basis = Basis(from) };

    public static ResultSheet Of(BootstrapInterval interval)
    {
        var from = interval.Distribution;
        var lines = Lines(from);
        lines[0] = lines[0] with { Interval = interval.Limits };
        if (interval.Acceleration is { } a) lines.Add(new("acceleration", a) { Note = Source(interval.AccelerationSource) });
        if (interval.LowerShare is { } low) lines.Add(new("share of resamples below the lower limit", low));
        if (interval.UpperShare is { } high) lines.Add(new("share of resamples below the upper limit", high));
        return new("Bootstrap interval of the " + from.What, Words(interval), lines)
        {
            Basis = Basis(from),
            Remarks = interval.Explanation.Length > 0 ? [interval.Explanation] : [],
        };
    }

    private static List<ResultLine> Lines(BootstrapDistribution from) =>
    [
        new(from.What, from.Estimate) { StandardError = from.StandardError },
        new("bias", from.Bias),
        new("bias correction z0", from.BiasCorrection) { Note = from.BiasCorrection is null ? "all resamples on one side" : Ties(from) },
    ];

    private static string Ties(BootstrapDistribution from)
        => from.Equal > 0 ? FormattableString.Invariant($"{from.Equal} resamples equal the estimate and count one half") : string.Empty;

    private static string Basis(BootstrapDistribution from)
    {
        var seed = from.Seed is { } s ? FormattableString.Invariant($"seed {s}") : "resamples given";
        return FormattableString.Invariant($"{from.Units} {from.UnitName}, {from.Statistics.Count + from.Undefined} resamples, {seed}");
    }

    private static string Words(BootstrapInterval interval)
    {
        var name = interval.Method switch
        {
            BootstrapMethod.BiasCorrectedAccelerated => "BCa [efron1987]",
            BootstrapMethod.Percentile => "percentile [efrontibshirani1993]",
            BootstrapMethod.Basic => "basic [davisonhinkley1997]",
            _ => "normal with bias taken off [davisonhinkley1997]",
        };
        return interval.Method == BootstrapMethod.Normal ? name
            : name + (interval.EndPoint == EndPoint.Type7 ? ", quantiles of type 7 [hyndmanfan1996]" : ", quantiles on the normal scale [davisonhinkley1997]");
    }

    private static string Source(Acceleration source) => source switch
    {
        Acceleration.CentredJackknife => "centred jackknife",
        Acceleration.UncentredJackknife => "uncentred jackknife",
        _ => "exact influence",
    };
}
