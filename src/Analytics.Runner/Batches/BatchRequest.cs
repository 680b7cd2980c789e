using Analytics.Runner.Running;

namespace Analytics.Runner.Batches;

/// <summary>One notebook, run once for each value of one of its settings.</summary>
public sealed record BatchRequest
{
    /// <summary>What all runs have in common. Its time-out is for each run.</summary>
    public required RunRequest Run { get; init; }

    /// <summary>The setting that differs: a string setting of the notebook, not among those of <see cref="Run"/>.</summary>
    public required string Setting { get; init; }

    /// <summary>The pages to make, in order, each value once.</summary>
    public required IReadOnlyList<BatchItem> Items { get; init; }

    /// <summary>Every value the setting could have, also those without a page: files are named so that no two of them meet.</summary>
    public required IReadOnlyList<string> AllValues { get; init; }

    /// <summary>What else the pages follow from, as digests by name, for example of the data: a page made from other things is made anew.</summary>
    public IReadOnlyDictionary<string, string> MadeFrom { get; init; } = new Dictionary<string, string>();

    /// <summary>Whether pages that are already there are made anew too.</summary>
    public bool Afresh { get; init; }
}

/// <summary>One page of a batch.</summary>
/// <param name="Value">The setting's value.</param>
/// <param name="Label">What to call it in messages.</param>
public sealed record BatchItem(string Value, string Label);
