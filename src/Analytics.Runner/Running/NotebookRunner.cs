using System.Globalization;
using Analytics.Runner.Files;
using Analytics.Runner.Kernels;
using Analytics.Runner.Outputs;

namespace Analytics.Runner.Running;

/// <summary>Runs a notebook from top to bottom and writes its report and its executed copy.</summary>
/// <param name="startKernel">Starts a kernel, or hands over one that was started early.</param>
/// <param name="files">Writes the results.</param>
/// <param name="time">The clock.</param>
public sealed class NotebookRunner(Func<INotebookKernel> startKernel, ResultFiles files, TimeProvider time)
{
    /// <summary>Runs a notebook. It stops at the first cell that fails; what there is by then is still written.</summary>
    /// <param name="request">What to run.</param>
    /// <param name="progress">Hears how far it is.</param>
    /// <param name="cancellation">Stops the run; nothing is written then.</param>
    /// <exception cref="NotebookException">The notebook, a setting or the folder for results cannot be used.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped from outside.</exception>
    public async Task<RunResult> RunAsync(RunRequest request, IRunProgress progress, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(progress);
        var clock = new RunClock(time);
        var prepared = PreparedRun.Of(request, clock.Started);
        var target = ResultTarget.For(request);
        files.Prepare(target);
        var run = await MakeAsync(prepared, clock, request, progress, content => files.Write(target, content), cancellation).ConfigureAwait(false);
        cancellation.ThrowIfCancellationRequested();
        files.Write(target, run.Content);
        return new RunResult(run.Ending, target.Page, target.Notebook, run.Took, run.FailedCell, run.Failure)
        {
            TableFiles = [.. run.Content.Tables.Select((_, i) => target.Table(i))],
        };
    }

    /// <summary>Runs a notebook as <see cref="RunAsync"/> does and hands over its report and its executed copy without writing them.</summary>
    /// <param name="request">What to run; its folder for results is not looked at.</param>
    /// <param name="progress">Hears how far it is.</param>
    /// <param name="onExit">Gets what there is if a cell ends the whole process; null lets it go.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="NotebookException">The notebook or a setting cannot be used.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped from outside.</exception>
    public Task<NotebookRun> MakeAsync(RunRequest request, IRunProgress progress, Action<ResultContent>? onExit = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(progress);
        var clock = new RunClock(time);
        return MakeAsync(PreparedRun.Of(request, clock.Started), clock, request, progress, onExit, cancellation);
    }

    private async Task<NotebookRun> MakeAsync(
        PreparedRun prepared, RunClock clock, RunRequest request, IRunProgress progress, Action<ResultContent>? onExit, CancellationToken cancellation)
    {
        var cells = prepared.Cells;
        RunEnding ending;
        using (new ProcessPlace(Path.GetDirectoryName(Path.GetFullPath(request.Notebook))!))
        using (new ExitGuard(() => onExit?.Invoke(prepared.Files.Make(RunEnding.Failed, clock.Elapsed))))
            ending = await RunCellsAsync(cells, request.Timeout, progress, cancellation).ConfigureAwait(false);

        progress.Writing();
        var took = clock.Elapsed;
        cancellation.ThrowIfCancellationRequested();
        var failed = cells.FirstOrDefault(c => FailureOf(c) is not null);
        return new NotebookRun(ending, prepared.Files.Make(ending, took), took, failed?.Label, failed is null ? null : FailureOf(failed));
    }

    private async Task<RunEnding> RunCellsAsync(IReadOnlyList<CellLog> cells, TimeSpan timeout, IRunProgress progress, CancellationToken cancellation)
    {
        using var watchdog = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var timeIsUp = Task.Delay(timeout, time, watchdog.Token);
        var kernel = startKernel();
        var toRun = cells.Where(c => c.Cell.IsCode && c.Cell.Source.Trim().Length > 0).ToList();
        var code = toRun.ConvertAll(c => new CellCode(c.Label, c.Cell.Source));
        kernel.Expect(code);
        for (var i = 0; i < toRun.Count; i++)
        {
            var cell = toRun[i];
            cell.ExecutionCount = i + 1;
            progress.CellStarts(cell.Label, i + 1, toRun.Count);
            var run = kernel.RunAsync(code[i], cell.Outputs);
            if (await Task.WhenAny(run, timeIsUp).ConfigureAwait(false) != run)
            {
                cancellation.ThrowIfCancellationRequested();
                cell.Outputs.Add(new ErrorOutput(OutOfTime(timeout)));
                return RunEnding.TimedOut;
            }

            if (await run.ConfigureAwait(false) is { } failure)
            {
                cell.Outputs.Add(new ErrorOutput(failure));
                break;
            }
        }

        // A kernel that is still busy cannot be put away; one that is done can.
        kernel.Dispose();
        await watchdog.CancelAsync().ConfigureAwait(false);
        return toRun.Exists(c => FailureOf(c) is not null) ? RunEnding.Failed : RunEnding.Complete;
    }

    private static CellFailure? FailureOf(CellLog cell)
        => cell.Outputs.Snapshot().OfType<ErrorOutput>().FirstOrDefault()?.Failure;

    private static CellFailure OutOfTime(TimeSpan timeout)
        => new("TimeOut", string.Create(CultureInfo.InvariantCulture, $"The run took longer than {timeout.TotalSeconds:0.###} s, and this cell was busy then. Give it more time with --timeout, or less to do."), null, []);
}
