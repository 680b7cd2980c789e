using System.CommandLine;
using Analytics.Cli.Verifying;
using Analytics.Runner.Proofs;

namespace Analytics.Cli.Commands;

/// <summary><c>verify REPORT</c>: says whether a report is as it was made and whether its numbers still follow from the data.</summary>
internal static class VerifyCommand
{
    public static Command Make(Screen screen)
    {
        var report = new Argument<string>("report") { HelpName = "REPORT", Description = "The report to verify, an HTML file made by run." };
        var season = new Option<string?>("--season") { HelpName = "DIR", Description = "The season folder the report is about. Without it only the file itself is checked." };
        var earlier = new Option<string[]>("--earlier") { HelpName = "DIR", Description = "An earlier season folder the report also rests on. May be given several times, oldest first.", DefaultValueFactory = _ => [] };
        var set = new Option<string[]>("--set") { HelpName = "NAME=VALUE", Description = "A setting the report tells in part only, such as another folder. May be given several times.", DefaultValueFactory = _ => [] };
        var with = new Option<string[]>("--with") { HelpName = "FILE", Description = "The file with metrics on trial the report was made with. May be given several times.", DefaultValueFactory = _ => [] };
        var notebook = new Option<string?>("--notebook") { HelpName = "FILE", Description = "The notebook the report was made with; notebooks/ and its name without it." };
        var command = new Command("verify", "Recomputes a report and says: same inputs and same numbers, inputs changed, or numbers differ, and which.")
        {
            report, season, earlier, set, with, notebook,
        };
        command.SetAction((parsed, cancellation) =>
        {
            var file = parsed.GetRequiredValue(report);
            var verification = new Verification(screen, Path.GetFileName(file), ReportFile.Read(file));
            return verification.RunAsync(
                parsed.GetValue(season) is { } folder ? new VerifyOptions(folder, parsed.GetRequiredValue(earlier), parsed.GetRequiredValue(set), parsed.GetRequiredValue(with), parsed.GetValue(notebook)) : null,
                cancellation);
        });
        return command;
    }
}
