using Analytics.Metrics.Bench.Inputs;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;

namespace Analytics.Metrics.Bench;

/// <summary>Everything that is asked of a sketched metric, answered from one season.</summary>
public sealed record SketchCard
{
    /// <summary>The sketch.</summary>
    public required MetricSketch Sketch { get; init; }

    /// <summary>Its values over the season, on one scale.</summary>
    public required SeasonValues Values { get; init; }

    /// <summary>The occasion on which most players have a value; null without any. Groups, ends, mass and overlap are of it.</summary>
    public required SeasonPeriod? Occasion { get; init; }

    /// <summary>How it lies in each group.</summary>
    public required IReadOnlyList<GroupDistribution> Groups { get; init; }

    /// <summary>Floor and ceiling.</summary>
    public required EndPile Ends { get; init; }

    /// <summary>How well it returns.</summary>
    public required Repeatability Repeats { get; init; }

    /// <summary>Typical error, detectable against worthwhile change, advice.</summary>
    public required TestQuality Quality { get; init; }

    /// <summary>Dependence on body mass; null with too few players or no spread.</summary>
    public required MassDependence? Mass { get; init; }

    /// <summary>What it says beside the library's metrics; null without values.</summary>
    public required LibraryOverlap? Overlap { get; init; }

    /// <summary>Whether it moves over the season; null when nobody was tested on two occasions.</summary>
    public required SeasonMovement? Movement { get; init; }

    /// <summary>Dependence on scale, day and tester.</summary>
    public required Conditions Conditions { get; init; }

    /// <summary>Error carried from the inputs beside the error observed.</summary>
    public required PropagatedError Error { get; init; }

    /// <summary>What it costs.</summary>
    public required SketchCost Cost { get; init; }

    /// <summary>The verdict.</summary>
    public required SketchVerdict Verdict { get; init; }

    /// <summary>All weak points, weightiest first.</summary>
    public required IReadOnlyList<WeakPoint> Weak { get; init; }

    /// <summary>The three weakest points.</summary>
    public IReadOnlyList<WeakPoint> Weakest => [.. Weak.Take(3)];

    /// <summary>Athlete-days for which the formula failed.</summary>
    public int TroubledDays => Sketch.Troubles.Select(t => (t.AthleteId, t.Date)).Distinct().Count();

    internal static SketchCard Of(BenchSquad squad, MetricSketch sketch)
    {
        var values = squad.Values(sketch.Metric);
        var occasion = OccasionValues.Fullest(values, squad.Profile);
        var own = occasion is null ? null : OccasionValues.On(values, occasion);
        var repeats = Repeatability.Of(squad.Profile, values, squad.Rule);
        var quality = TestQuality.Of(squad.Profile, values, squad.Minutes);
        var overlap = occasion is null ? null : LibraryOverlap.Of(squad, values, occasion);
        var error = PropagatedError.Of(squad, sketch, values, quality);
        var card = new SketchCard
        {
            Sketch = sketch,
            Values = values,
            Occasion = occasion,
            Groups = own is null ? [] : GroupDistribution.Of(own, squad.Profile),
            Ends = own is null ? new(0, 0, 0, 0) : EndPile.Of(sketch.Metric, own),
            Repeats = repeats,
            Quality = quality,
            Mass = own is null ? null : MassDependence.Of(own, occasion!, squad.Days.SelectMany(d => d), squad.Rule),
            Overlap = overlap,
            Movement = SeasonMovement.Of(squad, values, quality),
            Conditions = Conditions.Of(squad, sketch, values),
            Error = error,
            Cost = SketchCost.Of(sketch, error.Measures, squad.Minutes),
            Verdict = SketchVerdict.Of(own?.Count ?? 0, repeats, overlap, squad.Rule),
            Weak = [],
        };
        return card with { Weak = WeakPoints.Of(card, squad.Rule) };
    }
}
