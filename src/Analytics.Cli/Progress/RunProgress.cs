using Analytics.Runner.Running;

namespace Analytics.Cli.Progress;

/// <summary>Shows how far a run is: a bar on a terminal, plain lines elsewhere.</summary>
internal abstract class RunProgress : IRunProgress, IDisposable
{
    public static RunProgress For(Screen screen, string notebook)
        => screen.IsTerminal ? new ProgressBar(screen.Error, notebook) : new ProgressLines(screen.Error, notebook);

    public abstract void CellStarts(string label, int index, int count);

    public abstract void Writing();

    public abstract void Dispose();
}
