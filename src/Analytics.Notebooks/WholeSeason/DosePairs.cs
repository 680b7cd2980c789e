using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Load;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Gain in a metric beside what players did over the same stretch, a pair for each kind of dose.</summary>
internal static class DosePairs
{
    /// <summary>A sheet with a few gaps still tells how much a player did compared with others; our choice.</summary>
    public const double LeastShare = 0.8;

    /// <summary>The kinds of dose, in report order.</summary>
    public static IReadOnlyList<DoseMeasure> Kinds { get; } = [DoseMeasure.SessionLoad, DoseMeasure.VolumeLoad, DoseMeasure.JumpContacts];

    /// <summary>The pairs of one metric, in the order of <see cref="Kinds"/>; a change counts as gain where it is better.</summary>
    public static IReadOnlyList<DoseAgainstChange> Of(SquadProfile profile, TrainedStretch trained, Metric metric)
    {
        var doses = trained.Doses.ToDictionary(d => d.AthleteId, StringComparer.Ordinal);
        var sign = metric.Better == Direction.Lower ? -1 : 1;
        var changes = profile.Change(metric, trained.Before.Athletes, trained.After.Athletes).Athletes;
        return [.. Kinds.Select(kind => DoseAgainstChange.Of(new DosePair(kind.Name(), kind.Unit(), $"{Words.Short(metric)}, gain", metric.Unit),
            changes.Select(a => (a.AthleteId, Amount: doses.GetValueOrDefault(a.AthleteId)?.Amount(kind, LeastShare), a.Difference, a.Change?.StandardError))
                .Where(a => a.Amount is not null)
                .Select(a => new DosePoint(a.AthleteId, a.Amount!.Value, sign * a.Difference, a.StandardError > 0 ? a.StandardError : null))))];
    }
}
