using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Catalogue;

/// <summary>Which direction of a metric is better; never assumed by a reader.</summary>
public enum Direction
{
    /// <summary>More is better.</summary>
    Higher,

    /// <summary>Less is better.</summary>
    Lower,

    /// <summary>No direction is better by itself.</summary>
    Neither,
}

/// <summary>How the attempts of a day become the day's value.</summary>
public enum TrialRule
{
    /// <summary>The best attempt.</summary>
    Best,

    /// <summary>The mean of the attempts.</summary>
    Mean,
}

/// <summary>The physical quality a metric speaks about.</summary>
public enum Quality
{
    /// <summary>Body size.</summary>
    Body,

    /// <summary>Maximal strength.</summary>
    MaximalStrength,

    /// <summary>Explosive power.</summary>
    ExplosivePower,

    /// <summary>Reactive (stretch-shortening) ability.</summary>
    ReactiveAbility,

    /// <summary>Early acceleration.</summary>
    Acceleration,

    /// <summary>Maximal speed.</summary>
    MaximalSpeed,

    /// <summary>Momentum carried.</summary>
    Momentum,

    /// <summary>Change of direction.</summary>
    ChangeOfDirection,

    /// <summary>Upper-body power.</summary>
    UpperBodyPower,
}

/// <summary>Value of one attempt.</summary>
/// <param name="Value">In the metric's unit.</param>
/// <param name="StandardError">Error of this attempt known from its own fit or formula; null when none is known.</param>
/// <param name="Series">Scale it was measured on, for example <c>electronic, three-point start</c>; values of two series are never compared. Empty when there is only one scale.</param>
/// <param name="Doubt">A remark that travels with the value ("more than 10 repetitions"); null when there is none.</param>
/// <param name="ErrorDegreesOfFreedom">Degrees of freedom of <paramref name="StandardError"/>, for a Student t interval; null when it is taken as known.</param>
public sealed record TrialValue(double Value, double? StandardError = null, string Series = "", string? Doubt = null, int? ErrorDegreesOfFreedom = null)
{
    /// <summary>
    /// The part of <see cref="StandardError"/> that a retest does not show, since it is the equation's and not the day's; null when the value was measured
    /// or when its error is that of a fit, which a retest holds.
    /// </summary>
    public EquationError? Equation { get; init; }

    /// <summary>How the value came about, where values of one metric come about differently: "measured", "estimated from 5 repetitions"; else empty.</summary>
    public string HowMade { get; init; } = "";
}

/// <summary>Typical error known from a published study.</summary>
/// <param name="Percent">Coefficient of variation in percent; null when the study gives an absolute error.</param>
/// <param name="Absolute">Typical error in the metric's unit; null when the study gives a percentage.</param>
/// <param name="SourceKey">Key into docs/references.md.</param>
/// <param name="Athletes">Athletes retested in the study, which tell how well the figure is known; null when not stated, and then it is taken as exact.</param>
/// <param name="Series">Beginning of the series the study speaks of, for example <c>electronic</c>; null when it serves for every scale.</param>
public sealed record PublishedError(double? Percent, double? Absolute, string SourceKey, int? Athletes = null, string? Series = null);

/// <summary>A metric as data: what it is, its unit, how it comes from trials, and what is known about it.</summary>
public sealed record Metric
{
    /// <summary>Stable identifier, lower case with underscores.</summary>
    public required string Id { get; init; }

    /// <summary>Label for charts and tables, without unit.</summary>
    public required string Label { get; init; }

    /// <summary>Unit symbol.</summary>
    public required string Unit { get; init; }

    /// <summary>Decimals shown.</summary>
    public required int Decimals { get; init; }

    /// <summary>Which direction is better.</summary>
    public required Direction Better { get; init; }

    /// <summary>The quality it speaks about.</summary>
    public required Quality Quality { get; init; }

    /// <summary>How attempts become the day's value.</summary>
    public required TrialRule Rule { get; init; }

    /// <summary>Why the day's value is the best attempt or the mean; empty when it needs no reason.</summary>
    public string RuleReason { get; init; } = "";

    /// <summary>The attempts of a day as values; empty when the day has none.</summary>
    public required Func<AthleteDay, IEnumerable<TrialValue>> FromTrials { get; init; }

    /// <summary>Lowest plausible value, in <see cref="Unit"/>. Above 0 it says that the metric is an amount, see <see cref="IsAmount"/>.</summary>
    public required double PlausibleLow { get; init; }

    /// <summary>Highest plausible value, in <see cref="Unit"/>.</summary>
    public required double PlausibleHigh { get; init; }

    /// <summary>
    /// Whether every plausible value lies above 0, as for a mass, a distance, a time or a speed; not so for an angle from the vertical or a difference.
    /// The error of an amount is as a rule a share of it.
    /// </summary>
    public bool IsAmount => PlausibleLow > 0;

    /// <summary>What it measures, in one plain sentence.</summary>
    public required string Meaning { get; init; }

    /// <summary>Formula in one line, symbols with units.</summary>
    public required string Formula { get; init; }

    /// <summary>Keys into docs/references.md.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>Typical error from a published study, used only when the season has no retest of its own.</summary>
    public PublishedError? PublishedError { get; init; }

    /// <summary>Whether it is on trial: written in a notebook, not reviewed, not in the catalogue. Reports mark it so.</summary>
    public bool IsTrial { get; init; }
}
