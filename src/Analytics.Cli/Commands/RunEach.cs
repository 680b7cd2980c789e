using Analytics.Cli.Progress;
using Analytics.Runner;
using Analytics.Runner.Batches;
using Analytics.Runner.Files;
using Analytics.Runner.Running;

namespace Analytics.Cli.Commands;

/// <summary><c>run NOTEBOOK --each NAME</c>: a page for each value of a setting.</summary>
internal static class RunEach
{
    public static async Task<int> RunAsync(Screen screen, RunRequest request, EachOption each, CancellationToken cancellation)
    {
        if (request.Settings.Any(s => s.Key == each.Setting))
            throw new NotebookException(Fault.Usage, $"'{each.Setting}' is given both to --each and to --set; leave one of them out.");
        if (request.Inserted is not null)
            throw new NotebookException(Fault.Usage, "--with shows metrics on trial in one report of a squad; a player's page has reviewed metrics only. Leave out --with or --each.");
        if (each.Setting != AthletePages.Setting)
            throw new NotebookException(Fault.Usage, $"There is no list of values for '{each.Setting}'. --each takes: {AthletePages.Setting} (all athletes with results, or some: {AthletePages.Setting}=TC01,TC05).");
        var pages = AthletePages.Open(request);
        var all = pages.Items.Concat(pages.WithoutResults).Select(i => i.Value).ToList();
        var chosen = each.Choose(all).ToHashSet(StringComparer.Ordinal);
        List<BatchItem> items = [.. pages.Items.Where(i => chosen.Contains(i.Value))], without = [.. pages.WithoutResults.Where(i => chosen.Contains(i.Value))];
        if (items.Count == 0)
            throw new NotebookException(Fault.Data, "None of the athletes has a result that was kept, so there is no page to make. 'analytics check SEASON' tells what was held back.");

        var runner = new BatchRunner(EarlyStart.Kernel, new ResultFiles(), TimeProvider.System);
        BatchResult result;
        using (var progress = BatchProgress.For(screen, Path.GetFileName(request.Notebook)))
            result = await runner.RunAsync(new BatchRequest
            {
                Run = request,
                Setting = each.Setting,
                Items = items,
                AllValues = all,
                MadeFrom = new Dictionary<string, string> { ["season"] = pages.InputsSha256, ["program"] = ProgramBuild.Digest },
                Afresh = each.Afresh,
            }, progress, cancellation).ConfigureAwait(false);
        foreach (var line in BatchSummary.Complaints(result, without))
            screen.Error.WriteLine(line);
        foreach (var line in BatchSummary.Lines(result, without))
            screen.Out.WriteLine(line);
        return ExitCodeOf(result);
    }

    private static int ExitCodeOf(BatchResult result) => result.Ending switch
    {
        BatchEnding.Stopped => ExitCode.Interrupted,
        BatchEnding.TimedOut => ExitCode.TimeOut,
        _ => result.Failed.Count > 0 ? ExitCode.DataOrCell : ExitCode.Fine,
    };
}
