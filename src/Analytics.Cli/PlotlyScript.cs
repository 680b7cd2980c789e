namespace Analytics.Cli;

/// <summary>plotly.js as it lies inside Plotly.NET, the version that its charts are written for; packed when the program is built.</summary>
internal static class PlotlyScript
{
    private const string Name = "plotly.min.js.gz";

    public static byte[] ReadPacked()
    {
        using var stream = typeof(PlotlyScript).Assembly.GetManifestResourceStream(Name)
            ?? throw new InvalidOperationException($"The program lacks its part '{Name}'.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
