using System.CommandLine;
using Analytics.Season;

namespace Analytics.Cli.Commands;

/// <summary><c>new-season DIR</c>: writes a season folder with filled-in examples.</summary>
internal static class NewSeasonCommand
{
    public static Command Make(Screen screen)
    {
        var folder = new Argument<string>("folder") { HelpName = "DIR", Description = "The folder to make. It must not hold anything yet." };
        var command = new Command("new-season", "Writes a season folder whose files hold example rows to replace with your own.") { folder };
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(folder);
            var files = NewSeason.Write(path);
            screen.Out.WriteLine($"{path} holds a season with example rows:");
            foreach (var file in files)
                screen.Out.WriteLine($"  {file}");
            screen.Out.WriteLine($"Put your own rows in their place, then: analytics check {path}");
            return ExitCode.Fine;
        });
        return command;
    }
}
