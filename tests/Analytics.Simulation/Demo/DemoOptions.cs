namespace Analytics.Simulation.Demo;

/// <summary>What to leave in or out of a generated season.</summary>
public sealed record DemoOptions
{
    /// <summary>Missing tests, short series, injuries, hand times and typing errors.</summary>
    public bool WithMess { get; init; } = true;

    /// <summary>The clock starts at hand lift, when the body already moves.</summary>
    public bool WithStartArtefact { get; init; } = true;

    /// <summary>Every athlete has a repetition curve of his own; otherwise all follow the same one.</summary>
    public bool WithOwnRepetitionCurves { get; init; } = true;

    /// <summary>A contact drill on film on the last day.</summary>
    public bool WithClips { get; init; } = true;

    /// <summary>Where true changes come from.</summary>
    public ChangePlan Changes { get; init; } = ChangePlan.Training;

    /// <summary>A sixth testing day within the week of the last, so that the end of the season is tested twice as its start is.</summary>
    public bool WithEndRetest { get; init; }

    /// <summary>Correlations planted between the gains of two qualities; none in the season that is kept.</summary>
    public IReadOnlyList<Squad.PlantedLink> Links { get; init; } = [];

    /// <summary>Players made worse than they were drawn; none in the season that is kept.</summary>
    public IReadOnlyList<Squad.PlantedDeficit> Deficits { get; init; } = [];
}

/// <summary>Where true changes come from.</summary>
public enum ChangePlan
{
    /// <summary>Individual responses to a season of training; a third of them exactly none.</summary>
    Training,

    /// <summary>No one changes at all.</summary>
    None,

    /// <summary>
    /// A third of the squad unchanged, a third changed for the better (the time constant: for the worse) by <see cref="Squad.ErrorSize.Small"/> and a third by
    /// <see cref="Squad.ErrorSize.Large"/> typical errors, all of it between the last two testing days.
    /// </summary>
    TypicalErrors,
}
