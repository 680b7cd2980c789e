namespace Analytics.Runner.Running;

/// <summary>
/// A cell may end the whole process, for example with <c>Environment.Exit</c>. What there is by then is still
/// written, and the process says that the run failed.
/// </summary>
internal sealed class ExitGuard : IDisposable
{
    private readonly Action write;

    public ExitGuard(Action write)
    {
        this.write = write;
        AppDomain.CurrentDomain.ProcessExit += OnExit;
    }

    public void Dispose() => AppDomain.CurrentDomain.ProcessExit -= OnExit;

    private void OnExit(object? sender, EventArgs e)
    {
        Environment.ExitCode = 2;
        try
        {
            write();
        }
        catch (NotebookException)
        {
            // The process is ending: there is nobody left to tell, and the exit code says it failed.
        }
    }
}
