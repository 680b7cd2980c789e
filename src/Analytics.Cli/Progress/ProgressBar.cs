using System.Globalization;

namespace Analytics.Cli.Progress;

/// <summary>A bar that fills as cells run, for a terminal.</summary>
internal sealed class ProgressBar(TextWriter writer, string notebook) : RunProgress
{
    private readonly LiveBar bar = new(writer, notebook);

    public override void CellStarts(string label, int index, int count)
        => bar.Show(index - 1, count, string.Create(CultureInfo.InvariantCulture, $"{label} of {count}"));

    public override void Writing() => bar.Fill("writing");

    public override void Dispose() => bar.Dispose();
}
