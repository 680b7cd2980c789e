using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;

namespace Analytics.Notebooks.OnTrial;

/// <summary>The metrics on trial of a report: which stand in it, marked, and what went wrong with the others.</summary>
internal sealed class TrialMetrics
{
    private readonly IReadOnlyList<MetricSketch> _sketches;

    private TrialMetrics(IReadOnlyList<MetricSketch> sketches, IReadOnlyList<Metric> metrics, IReadOnlyList<string> leftOut, IReadOnlyList<FormulaFailure> failures)
        => (_sketches, Metrics, LeftOut, Failures) = (sketches, metrics, leftOut, failures);

    /// <summary>No metric on trial.</summary>
    public static TrialMetrics None { get; } = new([], [], [], []);

    /// <summary>The metrics, in the order given, their labels marked.</summary>
    public IReadOnlyList<Metric> Metrics { get; }

    /// <summary>A sentence for each sketch that could not be taken.</summary>
    public IReadOnlyList<string> LeftOut { get; }

    /// <summary>What went wrong in formulas, day by day.</summary>
    public IReadOnlyList<FormulaFailure> Failures { get; }

    /// <summary>Whether nothing was given.</summary>
    public bool IsEmpty => _sketches.Count == 0;

    /// <summary>These and more, worked out for the days of a report.</summary>
    /// <param name="more">Further sketches; one already there is not taken twice.</param>
    /// <param name="days">All athlete's days the report looks at, those of retests among them.</param>
    public TrialMetrics And(IEnumerable<MetricSketch> more, IEnumerable<AthleteDay> days)
    {
        MetricSketch[] all = [.. _sketches.Concat(more).Distinct()];
        AthleteDay[] looked = [.. days.Distinct()];
        var (metrics, leftOut, failures) = (new List<Metric>(), new List<string>(), new List<FormulaFailure>());
        foreach (var sketch in all)
        {
            if (sketch.Fault is { } fault)
                leftOut.Add($"{TrialMark.Name(sketch.Label)} is left out. {fault}");
            else if (metrics.Find(m => m.Id == sketch.Id) is { } first)
                leftOut.Add($"{TrialMark.Name(sketch.Label)} is left out, since {TrialMark.Without(first)} has the same identifier, {sketch.Id}. Give one of them another.");
            else
                metrics.Add(Worked(sketch, looked, failures));
        }

        return new(all, metrics, leftOut, failures);
    }

    /// <summary>What a test is worth, with what a metric on trial costs as its sketch says; others as they are.</summary>
    public TestQuality Costed(TestQuality quality)
        => !quality.Metric.IsTrial || quality.Cost is not null ? quality : quality with
        {
            Cost = _sketches.First(s => s.Id == quality.Metric.Id).Minutes is { } minutes
                ? new(TrialMark.Without(quality.Metric), minutes, "as its sketch says", IsDerived: false)
                : new("tests taken anyway", 0, "worked out of tests taken anyway", IsDerived: true),
        };

    // A copy has a run of its own: what another report met in the same formula, on days of its own, is none of this one's business.
    private static Metric Worked(MetricSketch sketch, IReadOnlyList<AthleteDay> days, List<FormulaFailure> failures)
    {
        var own = sketch with { };
        foreach (var day in days) own.Metric.FromTrials(day);
        // Asked now: later the library also tries formulas on days that never were.
        failures.AddRange(FormulaFailure.Of(own, days));
        return own.Metric with { Label = TrialMark.On(sketch.Label) };
    }
}
