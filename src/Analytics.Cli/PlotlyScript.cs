namespace Analytics.Cli;

/// <summary>plotly.js as it lies inside Plotly.NET: the same version that its charts are written for.</summary>
internal static class PlotlyScript
{
    public static string Read()
    {
        var assembly = typeof(Plotly.NET.GenericChart).Assembly;
        var name = Array.Find(assembly.GetManifestResourceNames(), n => n.EndsWith(".min.js", StringComparison.Ordinal))
            ?? throw new InvalidOperationException("Plotly.NET no longer carries plotly.js.");
        using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
