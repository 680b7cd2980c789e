using System.CommandLine;
using System.CommandLine.Help;
using Analytics.Cli.Commands;
using Analytics.Runner;
using Analytics.Season;

namespace Analytics.Cli;

/// <summary>The command line: parse, call, exit code.</summary>
internal static class CommandLine
{
    public static async Task<int> RunAsync(IReadOnlyList<string> args, Screen screen)
    {
        var root = new RootCommand("Runs notebooks on a season's testing data and writes reports; checks and starts season folders.")
        {
            RunCommand.Make(screen),
            VerifyCommand.Make(screen),
            CheckCommand.Make(screen),
            NewSeasonCommand.Make(screen),
            CodesCommand.Make(screen),
            PromoteCommand.Make(screen),
        };
        root.Add(HelpCommand.Make(root));
        if (root.Options.OfType<HelpOption>().FirstOrDefault() is { } help)
            help.Action = new TeachingHelp((HelpAction)help.Action!);
        var parsed = root.Parse(args);
        try
        {
            return await parsed.InvokeAsync(new InvocationConfiguration
            {
                EnableDefaultExceptionHandler = false,
                // A batch finishes the page it is at; all else ends at once.
                ProcessTerminationTimeout = TimeSpan.FromSeconds(10),
                Output = screen.Out,
                Error = screen.Error,
            }).ConfigureAwait(false);
        }
        catch (NotebookException e)
        {
            return Complain(screen, e.Message, ExitCode.Of(e.Kind));
        }
        catch (SeasonException e)
        {
            return Complain(screen, e.Message, ExitCode.DataOrCell);
        }
        catch (OperationCanceledException)
        {
            return Complain(screen, "Stopped. Nothing was written.", ExitCode.Interrupted);
        }
    }

    private static int Complain(Screen screen, string message, int code)
    {
        screen.Error.WriteLine(message);
        return code;
    }
}
