namespace Analytics.Metrics.Sprinting.Fits;

/// <summary>What a fit assumes about the clock and the body at the start.</summary>
public enum StartModel
{
    /// <summary>The clock starts with the first movement, the body at rest: t = t(x; V, T). At least 3 gates.</summary>
    Still,

    /// <summary>The clock is off by a constant t0, before or after the first movement: t = t0 + t(x; V, T). At least 4 gates.</summary>
    Offset,

    /// <summary>The body has covered an unseen distance D before the clock starts: t = t(x + D) - t(D). At least 4 gates.</summary>
    RunIn,

    /// <summary>Both; t0 and D are nearly one and the same to the data, so at least 6 gates.</summary>
    OffsetAndRunIn,
}

/// <summary>Which of the two numbers of a split carries the error.</summary>
public enum SplitResponse
{
    /// <summary>Gates stand where they should, times are in error. The usual choice for gates.</summary>
    Time,

    /// <summary>Times are exact, distances are in error, as with laser or radar.</summary>
    Distance,
}

/// <summary>Facts about start models.</summary>
public static class StartModels
{
    /// <summary>Fewest gates a fit of this model is made from: one more than its parameters, and 6 when both start terms are in.</summary>
    /// <param name="model">The model.</param>
    public static int GatesNeeded(this StartModel model) => model switch
    {
        StartModel.Still => 3,
        StartModel.Offset or StartModel.RunIn => 4,
        StartModel.OffsetAndRunIn => 6,
        _ => throw new ArgumentOutOfRangeException(nameof(model), model, $"Unknown start model {model}."),
    };

    /// <summary>The model in words, for methods sections.</summary>
    /// <param name="model">The model.</param>
    public static string InWords(this StartModel model) => model switch
    {
        StartModel.Still => "still start",
        StartModel.Offset => "start with clock offset",
        StartModel.RunIn => "start with unseen run-in",
        StartModel.OffsetAndRunIn => "start with clock offset and unseen run-in",
        _ => throw new ArgumentOutOfRangeException(nameof(model), model, $"Unknown start model {model}."),
    };

    internal static bool HasOffset(this StartModel model) => model is StartModel.Offset or StartModel.OffsetAndRunIn;

    internal static bool HasRunIn(this StartModel model) => model is StartModel.RunIn or StartModel.OffsetAndRunIn;
}
