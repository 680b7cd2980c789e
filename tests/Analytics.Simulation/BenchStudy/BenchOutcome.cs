using Analytics.Metrics.Bench;
using Analytics.Simulation.BenchStudy.Cases;
using Analytics.Simulation.BenchStudy.Squads;
using Analytics.Statistics;

namespace Analytics.Simulation.BenchStudy;

/// <summary>What the bench said of one sketch in one squad.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="OwnShare">The own share; null without one.</param>
/// <param name="Own">Its interval; null without one.</param>
/// <param name="Icc">Interval of the ICC; null without one.</param>
/// <param name="TrueIcc">The true ICC of these athletes; null where it is not known or the repeats are not retest days.</param>
/// <param name="Why">The reason given.</param>
public sealed record BenchOutcome(BenchVerdict Verdict, double? OwnShare, Interval? Own, Interval? Icc, double? TrueIcc, string Why)
{
    public static BenchOutcome Of(BenchCase what, BenchSeason season, BenchSquad squad)
    {
        var sketch = what.Sketch(season);
        if (sketch.Fault is { } fault) throw new InvalidOperationException($"{what.Name}: {fault}");
        var card = squad.Judge(sketch);
        var own = card.Verdict.Kind is BenchVerdict.Noise or BenchVerdict.NoValues ? null : card.Overlap?.Own;
        var repeated = card.Repeats.Kind == RepeatKind.RetestDays && what.Icc is not null ? Repeated(card, squad) : null;
        return new(card.Verdict.Kind, own?.Value, own?.Interval, card.Repeats.Interval, repeated is null ? null : what.Icc!(season, repeated), card.Verdict.Why);
    }

    private static HashSet<string> Repeated(SketchCard card, BenchSquad squad)
        => [.. squad.Profile.Retests[0].Occasions.Select(days => days.Select(d => d.Date).ToHashSet())
            .Select(dates => card.Values.Values.Where(v => dates.Contains(v.Date)).Select(v => v.AthleteId)).Aggregate((a, b) => a.Intersect(b))];
}
