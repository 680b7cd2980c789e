using System.CommandLine;
using Analytics.Season;

namespace Analytics.Cli.Commands;

/// <summary><c>codes SEASON</c>: the private list of who is who in reports that share codes.</summary>
internal static class CodesCommand
{
    private const int Widest = 40;

    public static Command Make(Screen screen)
    {
        var season = new Argument<string>("season") { HelpName = "SEASON", Description = "The season folder." };
        var earlier = new Option<string[]>("--earlier") { HelpName = "DIR", Description = "An earlier season folder whose players are listed too. May be given several times, oldest first.", DefaultValueFactory = _ => [] };
        var command = new Command("codes", "Lists who is who in reports made with --share codes. Private: for the coach who keeps the season, never to be sent with a report.") { season, earlier };
        command.SetAction(parsed =>
        {
            Tell(screen, SeasonShelf.Codes(parsed.GetRequiredValue(season), string.Join(';', parsed.GetRequiredValue(earlier))));
            return ExitCode.Fine;
        });
        return command;
    }

    private static void Tell(Screen screen, IReadOnlyList<AthleteCode> codes)
    {
        // On the other stream, so that a list sent into a file is the list alone.
        screen.Error.WriteLine("Private: keep this list; do not send it with a report.");
        int id = Width(codes.Select(c => c.AthleteId).Append("athlete_id")), name = Width(codes.Select(c => c.Name).Append("name"));
        foreach (var (first, second, third) in codes.Select(c => (c.AthleteId, c.Name, c.Code)).Prepend(("athlete_id", "name", "code")))
            screen.Out.WriteLine($"{PlainLine.Whole(first).PadRight(id)}  {PlainLine.Whole(second).PadRight(name)}  {third}");
    }

    private static int Width(IEnumerable<string> texts) => Math.Min(Widest, texts.Max(t => t.Length));
}
