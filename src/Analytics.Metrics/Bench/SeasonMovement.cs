using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Statistics;
using Analytics.Statistics.Change;
using Analytics.Statistics.EffectSize;

namespace Analytics.Metrics.Bench;

/// <summary>Whether a metric moves when players train, and stands still when they do not.</summary>
/// <param name="From">First testing day.</param>
/// <param name="To">Last testing day.</param>
/// <param name="Mean">Mean change of the players tested on two occasions, first to last.</param>
/// <param name="Gains">Players with a clear gain.</param>
/// <param name="Losses">Players with a clear loss.</param>
/// <param name="TypicalError">Typical error at the squad's level; null when none between days is known.</param>
/// <param name="Still">Mean change over retest days, when nothing should move; null without them.</param>
/// <param name="Paired">The last values beside the first ones, for the change in SD of changes (standardised response mean) with its exact interval; null for one player or equal changes.</param>
public sealed record SeasonMovement(DateOnly From, DateOnly To, MeanChange Mean, int Gains, int Losses, double? TypicalError, MeanChange? Still, PairedDifference? Paired)
{
    // Changes that differ by less, in parts of the values, differ by rounding.
    private const double AllAlike = 1e-11;

    /// <summary>Interval of the mean change in typical errors, these taken as known; null without one.</summary>
    public Interval? InTypicalErrors => TypicalError is { } error ? Mean.Mean.Interval?.Times(1 / error) : null;

    /// <summary>Whether the interval of the mean change leaves out 0; null without an interval.</summary>
    public bool? Moved => Mean.Mean.Interval is { } i ? !i.Contains(0) : null;

    internal static SeasonMovement? Of(BenchSquad squad, SeasonValues values, Seasons.TestQuality quality)
    {
        var change = SeasonChange.Of(squad.Profile, values);
        if (change.Athletes.Count == 0) return null;
        var reliability = values.Reliability(squad.Profile);
        double[] first = [.. change.Athletes.Select(a => a.Baseline.Value.Value)], last = [.. change.Athletes.Select(a => a.Last.Value.Value)];
        var mean = MeanChange.Of([.. change.Athletes.Select(a => a.Difference)]);
        return new(values.Dates[0], values.Dates[^1], mean, change.Gains, change.Losses,
            reliability.HoldsDayToDayVariation ? quality.TypicalError : null, reliability.Shift,
            mean.StandardDeviation > AllAlike * last.Max(Math.Abs) ? PairedDifference.Between(last, first) : null);
    }
}
