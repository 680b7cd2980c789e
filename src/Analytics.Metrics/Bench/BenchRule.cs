using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.Bench;

/// <summary>What can be said of a sketched metric.</summary>
public enum BenchVerdict
{
    /// <summary>Too few athletes have a value.</summary>
    NoValues,

    /// <summary>It does not return on a second occasion: no sign that it tells athletes apart.</summary>
    Noise,

    /// <summary>It repeats, but tells what two library metrics tell already.</summary>
    NothingNew,

    /// <summary>It repeats, and a good part of what repeats is its own.</summary>
    SaysSomethingNew,

    /// <summary>The data are too few, or lie between.</summary>
    CannotTellYet,
}

/// <summary>The thresholds behind <see cref="SketchVerdict"/>. All are our choice, no source; their error rates are measured, see docs/bench-study.md.</summary>
public sealed record BenchRule
{
    /// <summary>The rule of the bench.</summary>
    public static BenchRule Standard { get; } = new();

    /// <summary>Fewest athletes with a value, and fewest repeats or pairs for a figure.</summary>
    public int Fewest { get; init; } = 8;

    /// <summary>Where the interval of the ICC reaches down to 0, the metric is called noise only if it does not reach up to this: with 0.75 a trait of reliability 0.6 was called noise in 17 % of squads of 25.</summary>
    public double NoiseBelow { get; init; } = 0.6;

    /// <summary>Nothing new: the upper limit of its own share of lasting differences lies below this.</summary>
    public double OwnShareSmall { get; init; } = 0.25;

    /// <summary>Players on both days from which <see cref="OwnShareSmall"/> holds; with fewer, two of many metrics give most of anything by chance.</summary>
    public int FewestForShare { get; init; } = 20;

    /// <summary>Nothing new with fewer players: two library metrics give at least this share of the variance, as they do of a copy or a sum of them.</summary>
    public double GivenOfCopy { get; init; } = 0.98;

    /// <summary>Something new: the lower limit of its own share lies above this.</summary>
    public double OwnShareLeast { get; init; } = 0.10;

    /// <summary>Something new only where it surely returns between players of a group: in at least this share of squads drawn anew from the players.</summary>
    public double SurelyReturns { get; init; } = 0.999;

    /// <summary>Nothing new as well: a rank correlation within groups of at least this size with one library metric, its lower limit too.</summary>
    public double SameOrder { get; init; } = 0.95;

    /// <summary>Nothing new where there is no retest: the share of variance that two library metrics give.</summary>
    public double GivenByTwo { get; init; } = 0.90;

    /// <summary>Share of athletes who must have a library metric on both days for it to be one of the two.</summary>
    public double LeastShared { get; init; } = 0.8;

    /// <summary>Whether little of what returns is a metric's own.</summary>
    /// <param name="own">Its own share.</param>
    public bool IsLittle(OwnShare own)
    {
        ArgumentNullException.ThrowIfNull(own);
        return own.Interval is { } i && i.High < OwnShareSmall && (own.N >= FewestForShare || own.FromOthers >= GivenOfCopy);
    }

    /// <summary>Whether it surely returns between players of a group, and more than a little of that is its own.</summary>
    /// <param name="own">Its own share.</param>
    public bool IsItsOwn(OwnShare own)
    {
        ArgumentNullException.ThrowIfNull(own);
        return own.Interval is { } i && i.Low > OwnShareLeast && own.Returns >= SurelyReturns;
    }

    /// <summary>The rule in words a report can print.</summary>
    public string Statement => FormattableString.Invariant(
        $"Noise: the interval of the ICC holds 0 and stays below {NoiseBelow:0.00}. Nothing new: of the differences between players of a group that return on the second day, less than {100 * OwnShareSmall:0} % are its own (upper limit) once the best two library metrics are taken off (with fewer than {FewestForShare} players: these give {100 * GivenOfCopy:0} % of it), or it puts players in the same order as one of them (rank correlation {SameOrder:0.00} or more, lower limit); without retest days, the best two give {100 * GivenByTwo:0} % of the differences seen. Something new: it repeats, between players of a group too ({100 * SurelyReturns:0.#} % of resamples), and more than {100 * OwnShareLeast:0} % are its own (lower limit). Else: cannot tell yet. The limits are our choice, no source.");
}
