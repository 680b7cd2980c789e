using Analytics.Runner.Outputs;

namespace Analytics.Runner.Batches;

/// <summary>How a batch ended.</summary>
public sealed record BatchResult
{
    /// <summary>How it ended.</summary>
    public required BatchEnding Ending { get; init; }

    /// <summary>Full path of the folder that holds the pages.</summary>
    public required string Folder { get; init; }

    /// <summary>Complete pages made.</summary>
    public required int Made { get; init; }

    /// <summary>Pages left as they were: made from the same things by an earlier batch.</summary>
    public required int AlreadyThere { get; init; }

    /// <summary>Those whose run ended early, in the order of running. A page with what there was is written for each.</summary>
    public required IReadOnlyList<BatchFailure> Failed { get; init; }

    /// <summary>Those the batch did not come to.</summary>
    public required IReadOnlyList<BatchItem> Left { get; init; }

    /// <summary>Page files of earlier batches for values that are no longer any, by name.</summary>
    public required IReadOnlyList<string> OutOfDate { get; init; }

    /// <summary>How long it took.</summary>
    public required TimeSpan Took { get; init; }
}

/// <summary>How a batch ended.</summary>
public enum BatchEnding
{
    /// <summary>Every value had its run.</summary>
    Complete,

    /// <summary>It was stopped from outside.</summary>
    Stopped,

    /// <summary>One run took too long. Its cell is still busy: end the process.</summary>
    TimedOut,
}

/// <summary>A run that ended early.</summary>
/// <param name="Item">Which.</param>
/// <param name="Cell">The cell it ended in.</param>
/// <param name="Failure">Why.</param>
/// <param name="Page">Full path of the page with what there was.</param>
public sealed record BatchFailure(BatchItem Item, string Cell, CellFailure Failure, string Page);
