namespace Analytics.Cli.Verifying;

/// <summary>What a report is recomputed from.</summary>
/// <param name="Season">The season folder.</param>
/// <param name="Earlier">Earlier season folders, oldest first.</param>
/// <param name="Set">Further settings, as <c>name=value</c>.</param>
/// <param name="With">Files with metrics on trial.</param>
/// <param name="Notebook">The notebook file; null looks for it.</param>
internal sealed record VerifyOptions(string Season, IReadOnlyList<string> Earlier, IReadOnlyList<string> Set, IReadOnlyList<string> With, string? Notebook);
