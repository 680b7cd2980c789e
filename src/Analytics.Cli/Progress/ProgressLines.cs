using System.Globalization;

namespace Analytics.Cli.Progress;

/// <summary>A line per cell, for logs.</summary>
internal sealed class ProgressLines(TextWriter writer, string notebook) : RunProgress
{
    public override void CellStarts(string label, int index, int count)
        => writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{notebook}: {label} ({index} of {count})"));

    public override void Writing() => writer.WriteLine($"{notebook}: writing");

    public override void Dispose() => writer.Flush();
}
