using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using Analytics.Cli.Progress;
using Analytics.Cli.Sketching;
using Analytics.Runner;
using Analytics.Runner.Files;
using Analytics.Runner.Running;

namespace Analytics.Cli.Commands;

/// <summary><c>run NOTEBOOK</c>: runs a notebook and writes its report.</summary>
internal static class RunCommand
{
    private const double DefaultSeconds = 600;

    public static Command Make(Screen screen)
    {
        var notebook = new Argument<string>("notebook") { HelpName = "NOTEBOOK", Description = "The notebook to run, for example notebooks/testing-day.ipynb." };
        var season = new Option<string?>("--season") { HelpName = "DIR", Description = "The season folder, in the place of the notebook's own." };
        var earlier = new Option<string[]>("--earlier") { HelpName = "DIR", Description = "An earlier season folder to join on athlete_id. May be given several times, oldest first.", DefaultValueFactory = _ => [] };
        var share = new Option<string?>("--share") { HelpName = "WORD", Description = "How players are named: names, initials or codes. Codes are made with a key kept in the season folder." };
        var day = new Option<string?>("--day") { HelpName = "YYYY-MM-DD", Description = "The testing day, in the place of the latest." };
        var set = new Option<string[]>("--set") { HelpName = "NAME=VALUE", Description = "Any other setting of the notebook. May be given several times.", DefaultValueFactory = _ => [] };
        var with = new Option<string[]>("--with") { HelpName = "FILE", Description = "Metrics on trial to show in the report: a notebook whose cells with sketches are tagged sketch, or a .csx file of C#. May be given several times.", DefaultValueFactory = _ => [] };
        var outFolder = new Option<string>("--out") { HelpName = "DIR", Description = "Where the report and the executed notebook go.", DefaultValueFactory = _ => "out" };
        var timeout = new Option<double>("--timeout") { HelpName = "SECONDS", Description = "How long all cells together may take.", DefaultValueFactory = _ => DefaultSeconds };
        var each = new Option<string?>("--each") { HelpName = "NAME[=VALUES]", Description = "A page for each value of a setting, in one process, for example athlete, or athlete=TC01,TC05 for some." };
        var afresh = new Option<bool>("--afresh") { Description = "With --each: make pages anew that are already there." };
        var open = new Option<bool>("--open") { Description = "Open the report when it is written." };
        var command = new Command("run", "Runs a notebook from top to bottom and writes one HTML report and the executed notebook.")
        {
            notebook, season, earlier, share, day, set, with, each, afresh, outFolder, timeout, open,
        };
        command.SetAction((parsed, cancellation) =>
        {
            var request = new RunRequest
            {
                Notebook = parsed.GetRequiredValue(notebook),
                Settings = GivenSettings.From(parsed.GetRequiredValue(notebook), new RunOptions
                {
                    Season = parsed.GetValue(season),
                    Earlier = parsed.GetRequiredValue(earlier),
                    Share = parsed.GetValue(share),
                    Day = parsed.GetValue(day),
                    Set = parsed.GetRequiredValue(set),
                }),
                Inserted = SketchCells.From(parsed.GetRequiredValue(with)),
                OutFolder = parsed.GetRequiredValue(outFolder),
                Timeout = Seconds(parsed.GetRequiredValue(timeout)),
                Library = LibraryName.Text,
                Charts = EarlyStart.Charts,
            };
            return EachOption.From(parsed.GetValue(each), parsed.GetValue(afresh), parsed.GetValue(open)) is { } wanted
                ? RunEach.RunAsync(screen, request, wanted, cancellation)
                : RunAsync(screen, request, parsed.GetValue(open), cancellation);
        });
        return command;
    }

    private static async Task<int> RunAsync(Screen screen, RunRequest request, bool open, CancellationToken cancellation)
    {
        var runner = new NotebookRunner(EarlyStart.Kernel, new ResultFiles(), TimeProvider.System);
        RunResult result;
        using (var progress = RunProgress.For(screen, Path.GetFileName(request.Notebook)))
            result = await runner.RunAsync(request, progress, cancellation).ConfigureAwait(false);
        Tell(screen, request, result);
        if (open)
            Open(screen, result.PageFile);
        return result.Ending switch
        {
            RunEnding.Complete => ExitCode.Fine,
            RunEnding.Failed => ExitCode.DataOrCell,
            _ => ExitCode.TimeOut,
        };
    }

    private static void Tell(Screen screen, RunRequest request, RunResult result)
    {
        var took = result.Took.TotalSeconds.ToString("0.0", CultureInfo.InvariantCulture);
        var name = Path.GetFileName(request.Notebook);
        if (result.Failure is { } failure)
        {
            screen.Error.WriteLine(FailureText.Stopped(name, result.FailedCell, failure));
            foreach (var place in failure.Trace.Count > 1 ? failure.Trace : [])
                screen.Error.WriteLine(place);
            screen.Error.WriteLine("What was made before that is written:");
        }
        else
        {
            screen.Out.WriteLine($"{name} ran in {took} s.");
        }

        screen.Out.WriteLine($"  report    {Shown(result.PageFile)}");
        screen.Out.WriteLine($"  notebook  {Shown(result.NotebookFile)}");
        foreach (var table in result.TableFiles)
            screen.Out.WriteLine($"  table     {Shown(table)}");
    }

    internal static string Shown(string path)
    {
        var relative = Path.GetRelativePath(Environment.CurrentDirectory, path);
        return relative.StartsWith("..", StringComparison.Ordinal) ? path : relative;
    }

    private static TimeSpan Seconds(double seconds)
        => seconds is > 0 and <= 86_400
            ? TimeSpan.FromSeconds(seconds)
            : throw new NotebookException(Fault.Usage, string.Create(CultureInfo.InvariantCulture, $"--timeout is a number of seconds above 0 and up to 86400 (a day), not {seconds}."));

    private static void Open(Screen screen, string page)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(page) { UseShellExecute = true });
        }
        catch (System.ComponentModel.Win32Exception)
        {
            screen.Error.WriteLine($"No program on this machine opens HTML files; open {page} yourself.");
        }
    }
}
