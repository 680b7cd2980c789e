using Analytics.Metrics.Bench.Inputs;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;

namespace Analytics.Metrics.Bench;

/// <summary>Everything that is asked of a sketched metric, answered from one season. Each part is worked out when it is first asked for: a verdict needs only a few.</summary>
public sealed record SketchCard
{
    private readonly Lazy<OccasionValues?> _own;
    private readonly Lazy<IReadOnlyList<GroupDistribution>> _groups;
    private readonly Lazy<EndPile> _ends;
    private readonly Lazy<Repeatability> _repeats;
    private readonly Lazy<TestQuality> _quality;
    private readonly Lazy<MassDependence?> _mass;
    private readonly Lazy<LibraryOverlap?> _overlap;
    private readonly Lazy<SeasonMovement?> _movement;
    private readonly Lazy<Conditions> _conditions;
    private readonly Lazy<PropagatedError> _error;
    private readonly Lazy<SketchCost> _cost;
    private readonly Lazy<SketchVerdict> _verdict;
    private readonly Lazy<IReadOnlyList<WeakPoint>> _weak;

    internal SketchCard(BenchSquad squad, MetricSketch sketch)
    {
        Sketch = sketch;
        Values = squad.Values(sketch.Metric);
        Occasion = OccasionValues.Fullest(Values, squad.Profile);
        _own = new(() => Occasion is null ? null : OccasionValues.On(Values, Occasion));
        _groups = new(() => _own.Value is { } own ? GroupDistribution.Of(own, squad.Profile) : []);
        _ends = new(() => _own.Value is { } own ? EndPile.Of(sketch.Metric, own) : new(0, 0, 0, 0));
        _repeats = new(() => Repeatability.Of(squad.Profile, Values, squad.Rule));
        _quality = new(() => TestQuality.Of(squad.Profile, Values, squad.Minutes));
        _mass = new(() => _own.Value is { } own ? MassDependence.Of(own, Occasion!, squad.Days.SelectMany(d => d), squad.Rule) : null);
        _overlap = new(() => Occasion is null ? null : LibraryOverlap.Of(squad, Values, Occasion));
        _movement = new(() => SeasonMovement.Of(squad, Values, Quality));
        _conditions = new(() => Conditions.Of(squad, sketch, Values));
        _error = new(() => PropagatedError.Of(squad, sketch, Values, Quality));
        _cost = new(() => SketchCost.Of(sketch, Error.Measures, squad.Minutes));
        _verdict = new(() => SketchVerdict.Of(_own.Value?.Count ?? 0, Repeats, _overlap, squad.Rule));
        _weak = new(() => WeakPoints.Of(this, squad.Rule));
    }

    /// <summary>The sketch.</summary>
    public MetricSketch Sketch { get; internal init; }

    /// <summary>Its values over the season, on one scale.</summary>
    public SeasonValues Values { get; internal init; }

    /// <summary>The occasion on which most players have a value; null without any. Groups, ends, mass and overlap are of it.</summary>
    public SeasonPeriod? Occasion { get; internal init; }

    /// <summary>How it lies in each group.</summary>
    public IReadOnlyList<GroupDistribution> Groups { get => _groups.Value; internal init => _groups = new(value); }

    /// <summary>Floor and ceiling.</summary>
    public EndPile Ends { get => _ends.Value; internal init => _ends = new(value); }

    /// <summary>How well it returns.</summary>
    public Repeatability Repeats { get => _repeats.Value; internal init => _repeats = new(value); }

    /// <summary>Typical error, detectable against worthwhile change, advice.</summary>
    public TestQuality Quality { get => _quality.Value; internal init => _quality = new(value); }

    /// <summary>Dependence on body mass; null with too few players or no spread.</summary>
    public MassDependence? Mass { get => _mass.Value; internal init => _mass = new(value); }

    /// <summary>What it says beside the library's metrics; null without values.</summary>
    public LibraryOverlap? Overlap { get => _overlap.Value; internal init => _overlap = new(value); }

    /// <summary>Whether it moves over the season; null when nobody was tested on two occasions.</summary>
    public SeasonMovement? Movement { get => _movement.Value; internal init => _movement = new(value); }

    /// <summary>Dependence on scale, day and tester.</summary>
    public Conditions Conditions { get => _conditions.Value; internal init => _conditions = new(value); }

    /// <summary>Error carried from the inputs beside the error observed.</summary>
    public PropagatedError Error { get => _error.Value; internal init => _error = new(value); }

    /// <summary>What it costs.</summary>
    public SketchCost Cost { get => _cost.Value; internal init => _cost = new(value); }

    /// <summary>The verdict.</summary>
    public SketchVerdict Verdict { get => _verdict.Value; internal init => _verdict = new(value); }

    /// <summary>All weak points, weightiest first.</summary>
    public IReadOnlyList<WeakPoint> Weak { get => _weak.Value; internal init => _weak = new(value); }

    /// <summary>The three weakest points.</summary>
    public IReadOnlyList<WeakPoint> Weakest => [.. Weak.Take(3)];

    /// <summary>Athlete-days for which the formula failed.</summary>
    public int TroubledDays => Sketch.Troubles.Select(t => (t.AthleteId, t.Date)).Distinct().Count();
}
