namespace Analytics.Metrics.Sketching;

/// <summary>A formula in C# as a line of text.</summary>
internal static class FormulaText
{
    public static string OneLine(string written) => string.Join(' ', written.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
