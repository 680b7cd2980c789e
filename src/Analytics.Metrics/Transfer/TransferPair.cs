using Analytics.Statistics;
using Analytics.Statistics.Association;
using Analytics.Statistics.Association.Repeated;

namespace Analytics.Metrics.Transfer;

/// <summary>One weight-room measure beside one field measure. Signs are gain with gain: a time that falls is a gain.</summary>
public sealed record TransferPair
{
    /// <summary>The weight-room measure.</summary>
    public required TransferMeasure WeightRoom { get; init; }

    /// <summary>The field measure.</summary>
    public required TransferMeasure Field { get; init; }

    /// <summary>Inputs both are made from ("body mass"): an association is partly arithmetic then. Empty when there are none.</summary>
    public required IReadOnlyList<string> SharedInputs { get; init; }

    /// <summary>
    /// Correlation within players over the season, with its classic interval [bakdash2017]: the calendar is in it, so anybody who trains shows it. Null when
    /// not computable.
    /// </summary>
    public RepeatedMeasuresCorrelation? Classic { get; init; }

    /// <summary>The same correlation with an interval that takes the player as the unit.</summary>
    public WithinCorrelation? OverSeason { get; init; }

    /// <summary>The same beyond the calendar: what each testing day did to everybody is taken off. Good and bad days are still in it.</summary>
    public WithinCorrelation? BeyondCalendar { get; init; }

    /// <summary>Gain with gain beyond the calendar, shared errors taken off: what the verdict rests on. Null when not computable.</summary>
    public GainCorrelation? Gains { get; init; }

    /// <summary>Field change on weight-room change; null when not computable.</summary>
    public ChangeSlope? Slope { get; init; }

    /// <summary>What errors alone give; null when not computable.</summary>
    public SharedErrors? Errors { get; init; }

    /// <summary>What the shared background alone gives; null when not computable.</summary>
    public SharedBackground? Background { get; init; }

    /// <summary>p of <see cref="Gains"/> adjusted for the number of pairs [holm1979]; null when there is none.</summary>
    public double? AdjustedP { get; init; }

    /// <summary>
    /// Interval of the correlation of gains as measured that holds for all pairs together at the study's level (Bonferroni): a little wider than Holm's p asks for.
    /// </summary>
    public Interval? Simultaneous { get; init; }

    /// <summary>The same of the correlation of true gains.</summary>
    public Interval? SimultaneousOfTrueGains { get; init; }

    /// <summary>What can be said.</summary>
    public required TransferVerdict Verdict { get; init; }

    /// <summary>The verdict as one plain sentence.</summary>
    public required string Sentence { get; init; }

    /// <summary>Why figures are missing, or what limits them; empty when nothing.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Whether all players gained the same in one of the measures, so that there is nothing to correlate.</summary>
    public bool GainsAlike { get; init; }

    /// <summary>Players with gains in both.</summary>
    public int Athletes => Gains?.Athletes ?? 0;
}
