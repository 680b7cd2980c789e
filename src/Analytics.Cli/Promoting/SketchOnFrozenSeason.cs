using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Runner;
using Analytics.Season;

namespace Analytics.Cli.Promoting;

/// <summary>Lets a sketch show what it gives before it becomes a metric.</summary>
internal static class SketchOnFrozenSeason
{
    /// <summary>The sketch's values on the frozen season.</summary>
    /// <exception cref="NotebookException">It has a fault, goes wrong on a day, or has no value.</exception>
    public static IReadOnlyList<FrozenValue> Values(MetricSketch sketch, Clone clone, out IReadOnlyList<AthleteDay> days)
    {
        if (sketch.Fault is { } fault) throw new NotebookException(Fault.Data, $"The sketch is not ready: {fault}");
        days = [.. SeasonReader.Read(clone.Full(Clone.FrozenSeason)).Days.SelectMany(d => d.Athletes)];
        var values = FrozenValues.Of(sketch.Metric, days);
        if (sketch.Troubles is [var first, ..] troubles)
        {
            throw new NotebookException(Fault.Data, string.Create(CultureInfo.InvariantCulture,
                $"The formula of '{sketch.Id}' goes wrong on {troubles.Select(t => (t.AthleteId, t.Date)).Distinct().Count()} of {days.Count} athlete-days of {Clone.FrozenSeason}; first {first.AthleteId} on {first.Date:yyyy-MM-dd}: {first.Message}"));
        }

        Spare(sketch, days);
        return values.Count > 0 ? values
            : throw new NotebookException(Fault.Data, $"The formula of '{sketch.Id}' gives no value on {Clone.FrozenSeason}, so no test could hold it. Mend the formula; if it needs trials that season has not (hand times, force plates), promote by hand as DEVELOPERS.md says.");
    }

    // On the bench a failing day is told and left out; in the library it would stop every report that reads the catalogue. So it is asked on days that lack something.
    private static void Spare(MetricSketch sketch, IReadOnlyList<AthleteDay> days)
    {
        (string What, Func<AthleteDay, AthleteDay> Less)[] lacks =
        [
            ("without a stature", d => d with { Stature = null }),
            ("without a body mass", d => d with { BodyMass = null, BodyMassDate = null, Trials = [.. d.Trials.Where(t => t is not BodyMeasure)] }),
            ("without any trial", d => d with { Trials = [] }),
            .. days.SelectMany(d => d.Trials).Select(t => t.GetType()).Distinct().OrderBy(t => t.Name, StringComparer.Ordinal)
                .Select(kind => ($"with no {kind.Name}", (Func<AthleteDay, AthleteDay>)(d => d with { Trials = [.. d.Trials.Where(t => t.GetType() != kind)] }))),
        ];
        foreach (var (what, less) in lacks)
        {
            var asked = sketch with { };
            foreach (var day in days) _ = asked.Metric.FromTrials(less(day)).Count();
            if (asked.Troubles is [var first, ..])
                throw new NotebookException(Fault.Data, $"The formula of '{sketch.Id}' goes wrong on a day {what}, which would stop every report once it is in the library: {first.Message}");
        }
    }

    /// <summary>Holds the values of the compiled metric against the sketch's.</summary>
    /// <exception cref="NotebookException">They differ.</exception>
    public static void Same(IReadOnlyList<FrozenValue> sketch, IReadOnlyList<FrozenValue> metric, Metric compiled)
    {
        if (sketch.SequenceEqual(metric)) return;
        var (was, now) = sketch.Zip(metric).FirstOrDefault(p => p.First != p.Second);
        throw new NotebookException(Fault.Data, string.Create(CultureInfo.InvariantCulture,
            $"The formula gives other values in the library than in the sketch{(was is null ? $": {metric.Count} in place of {sketch.Count}" : $", for example {now!.Value} {compiled.Unit} in place of {was.Value} for {was.Athlete} on {was.Date:yyyy-MM-dd}")}. A formula may depend on nothing but its trial and its day."));
    }
}
