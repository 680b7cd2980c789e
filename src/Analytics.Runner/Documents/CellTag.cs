namespace Analytics.Runner.Documents;

/// <summary>Cell tags the runner acts on; all follow conventions that notebook tools share.</summary>
public static class CellTag
{
    /// <summary>The settings cell.</summary>
    public const string Settings = "parameters";

    /// <summary>The cell that holds the settings given for one run.</summary>
    public const string InjectedSettings = "injected-parameters";

    /// <summary>Code of another file, put in for one run.</summary>
    public const string InjectedCode = "injected-code";

    /// <summary>Cells put in for one run: of a notebook that was run before they are taken out again, and nobody counts them.</summary>
    internal static IReadOnlyList<string> Injected { get; } = [InjectedSettings, InjectedCode];

    /// <summary>Neither prose nor outputs of the cell go into the report; its code stays in the appendix.</summary>
    public const string LeaveOut = "remove-cell";
}
