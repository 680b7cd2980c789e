using System.Text.RegularExpressions;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Sketching;

/// <summary>
/// A metric on trial: an idea written as a formula over typed trials, with everything a report needs. <see cref="Metric"/> stands wherever a library metric
/// does; what goes wrong in the formula is told in <see cref="Troubles"/> and stops neither the other players nor the other metrics.
/// </summary>
/// <remarks>Make one with <see cref="Sketch"/>; change one with <c>with</c>, which gives a sketch of its own.</remarks>
public sealed partial record MetricSketch
{
    private readonly Lazy<SketchRun> _run;
    private readonly Lazy<Metric> _metric;
    private readonly Lazy<string?> _fault;

    internal MetricSketch()
    {
        _run = new(() => new SketchRun(this));
        _metric = new(Make);
        _fault = new(() => SketchFault.Of(this));
    }

    // A copy with other choices has its own run.
    private MetricSketch(MetricSketch from)
    {
        (Id, Label, Unit, Better, Low, High, Rule, RuleReason) = (from.Id, from.Label, from.Unit, from.Better, from.Low, from.High, from.Rule, from.RuleReason);
        (Quality, Decimals, Meaning, Formula, Sources, Minutes, Written, MakeFormula, Kind, Limits)
            = (from.Quality, from.Decimals, from.Meaning, from.Formula, from.Sources, from.Minutes, from.Written, from.MakeFormula, from.Kind, from.Limits);
        _run = new(() => new SketchRun(this));
        _metric = new(Make);
        _fault = new(() => SketchFault.Of(this));
    }

    /// <summary>Identifier, lower case with underscores; must not be that of a library metric.</summary>
    public required string Id { get; init; }

    /// <summary>Label for charts and tables, without unit.</summary>
    public required string Label { get; init; }

    /// <summary>Unit of the values, see <see cref="UnitExpression"/>.</summary>
    public required string Unit { get; init; }

    /// <summary>Which direction is better.</summary>
    public required Direction Better { get; init; }

    /// <summary>Lowest value to be believed, in <see cref="Unit"/>.</summary>
    public required double Low { get; init; }

    /// <summary>Highest value to be believed, in <see cref="Unit"/>.</summary>
    public required double High { get; init; }

    /// <summary>Best attempt or mean of the attempts.</summary>
    public TrialRule Rule { get; init; } = TrialRule.Mean;

    /// <summary>Why; empty when it needs no reason.</summary>
    public string RuleReason { get; init; } = "";

    /// <summary>The quality it is meant to speak about.</summary>
    public Quality Quality { get; init; } = Quality.ExplosivePower;

    /// <summary>Decimals shown; null for three figures of the usual size: half way between the sizes of the lowest and the highest value believed.</summary>
    public int? Decimals { get; init; }

    /// <summary>What it measures, in one plain sentence.</summary>
    public string Meaning { get; init; } = "";

    /// <summary>The formula in words, symbols with units, for example <c>s / H; s jump distance [m], H stature [m]</c>; empty for the line of C#.</summary>
    public string Formula { get; init; } = "";

    /// <summary>Keys into docs/references.md; empty for an own idea.</summary>
    public IReadOnlyList<string> Sources { get; init; } = [];

    /// <summary>Minutes per athlete it costs beyond the tests it is worked out of; null for nothing more.</summary>
    public double? Minutes { get; init; }

    /// <summary>How long the formula may take; see <see cref="SketchLimits"/>.</summary>
    public SketchLimits Limits { get; init; } = SketchLimits.Usual;

    /// <summary>The formula as written in C#.</summary>
    public string Written { get; internal init; } = "";

    /// <summary>Kind of trial each value is of; null when a value is of the whole day.</summary>
    public Type? Kind { get; internal init; }

    /// <summary>Makes the formula in <see cref="Unit"/>.</summary>
    internal Func<string, AttemptFormula> MakeFormula { get; init; } = unit => AttemptFormula.Day(unit, _ => null);

    /// <summary>The sketch as a metric, marked as on trial. One object for one sketch.</summary>
    public Metric Metric => _metric.Value;

    /// <summary>What is wrong with the sketch itself, so that it has no values at all, in words that say what to do; null when nothing.</summary>
    public string? Fault => _fault.Value;

    /// <summary>What went wrong in the formula so far, by athlete and day; complete for the days the metric was asked for.</summary>
    public IReadOnlyList<SketchTrouble> Troubles => Fault is null ? _run.Value.Troubles : [];

    /// <summary>Whether the formula was given up because it is too slow.</summary>
    public bool IsGivenUp => Fault is null && _run.Value.IsGivenUp;

    /// <summary>The same idea with the best attempt as the value of the day.</summary>
    /// <param name="id">Identifier of the copy; null for this one's with <c>_best</c>.</param>
    public MetricSketch BestOf(string? id = null) => this with { Id = id ?? Id + "_best", Label = $"{Label}, best", Rule = TrialRule.Best, RuleReason = "" };

    /// <summary>The same idea with the mean of the attempts as the value of the day.</summary>
    /// <param name="id">Identifier of the copy; null for this one's with <c>_mean</c>.</param>
    public MetricSketch MeanOf(string? id = null) => this with { Id = id ?? Id + "_mean", Label = $"{Label}, mean", Rule = TrialRule.Mean, RuleReason = "" };

    /// <summary>Whether two variables hold the same sketch.</summary>
    public bool Equals(MetricSketch? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);

    /// <summary>The attempts of a day in order, null where one gives no value.</summary>
    internal IReadOnlyList<TrialValue?> Attempts(AthleteDay day) => Fault is null ? _run.Value.Attempts(day) : [];

    /// <summary>The numbers of a day's attempts in order, null where one gives none.</summary>
    internal IReadOnlyList<double?> Numbers(AthleteDay day) => Fault is null ? _run.Value.Numbers(day) : [];

    [GeneratedRegex("^[a-z][a-z0-9]*(_[a-z0-9]+)*\\z")]
    internal static partial Regex IdForm();

    private Metric Make() => new()
    {
        Id = Id,
        Label = Label,
        Unit = Unit,
        Decimals = Decimals ?? Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Max((Math.Abs(Low) + Math.Abs(High)) / 2, 1e-9))), 0, 6),
        Better = Better,
        Quality = Quality,
        Rule = Rule,
        RuleReason = RuleReason,
        FromTrials = Fault is null ? day => _run.Value.Of(day) : _ => [],
        PlausibleLow = Low,
        PlausibleHigh = High,
        Meaning = Meaning.Length > 0 ? Meaning : "Not said yet.",
        Formula = Formula.Length > 0 ? Formula : FormulaText.OneLine(Written),
        Sources = Sources,
        IsTrial = true,
    };
}
