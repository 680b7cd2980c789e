namespace Analytics.Cli.Commands;

/// <summary>Options of <c>run</c> that become settings of the notebook.</summary>
internal sealed record RunOptions
{
    /// <summary>The season folder.</summary>
    public string? Season { get; init; }

    /// <summary>Earlier season folders, oldest first.</summary>
    public IReadOnlyList<string> Earlier { get; init; } = [];

    /// <summary>How players are named.</summary>
    public string? Share { get; init; }

    /// <summary>The testing day.</summary>
    public string? Day { get; init; }

    /// <summary>Further settings, as <c>name=value</c>.</summary>
    public IReadOnlyList<string> Set { get; init; } = [];
}
