using System.CommandLine;
using Analytics.Season;

namespace Analytics.Cli.Commands;

/// <summary><c>check SEASON</c>: reads a season folder and says what would be used and what is held back.</summary>
internal static class CheckCommand
{
    public static Command Make(Screen screen)
    {
        var season = new Argument<string>("season") { HelpName = "SEASON", Description = "The season folder." };
        var command = new Command("check", "Reads a season folder; lists what was kept, and each row held back with what would mend it.") { season };
        command.SetAction((parsed, cancellation) =>
        {
            var data = SeasonReader.Read(parsed.GetRequiredValue(season), cancellation);
            foreach (var line in SeasonCheckText.Lines(data))
                screen.Out.WriteLine(line);
            return Task.FromResult(SeasonCheckText.ExitCode(data));
        });
        return command;
    }
}
