using System.Globalization;
using System.Security.Cryptography;
using Analytics.Runner.Documents;
using Analytics.Runner.Files;
using Analytics.Runner.Kernels;
using Analytics.Runner.Outputs;
using Analytics.Runner.Settings;

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
        var started = time.GetLocalNow();
        var clock = time.GetTimestamp();
        var name = Path.GetFileName(request.Notebook);
        var bytes = NotebookFile.Read(request.Notebook);
        var document = NotebookDocument.Parse(NotebookFile.Decode(bytes, name), name);
        var settings = SettingsForRun.Apply(document, name, request.Settings);
        var target = ResultTarget.For(request);
        files.Prepare(target);

        var cells = CellLog.For(document);
        var results = new RunFiles(request, document, cells, settings, Convert.ToHexStringLower(SHA256.HashData(bytes)), started);
        RunEnding ending;
        using (new ProcessPlace(Path.GetDirectoryName(Path.GetFullPath(request.Notebook))!))
        using (new ExitGuard(() => files.Write(target, results.Make(RunEnding.Failed, time.GetElapsedTime(clock)))))
            ending = await RunCellsAsync(cells, request.Timeout, progress, cancellation).ConfigureAwait(false);

        progress.Writing();
        var took = time.GetElapsedTime(clock);
        cancellation.ThrowIfCancellationRequested();
        files.Write(target, results.Make(ending, took));
        var failed = cells.FirstOrDefault(c => FailureOf(c) is not null);
        return new RunResult(ending, target.Page, target.Notebook, took, failed?.Label, failed is null ? null : FailureOf(failed));
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
