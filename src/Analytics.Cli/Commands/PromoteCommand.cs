using System.CommandLine;
using Analytics.Cli.Promoting;

namespace Analytics.Cli.Commands;

/// <summary><c>promote FILE</c>: makes a sketch a metric of the library.</summary>
internal static class PromoteCommand
{
    public static Command Make(Screen screen)
    {
        var file = new Argument<string>("file") { HelpName = "FILE[#ID]", Description = "A notebook with a cell tagged sketch, or a .csx file; #ID names one sketch of several." };
        var name = new Option<string>("--name") { HelpName = "NEW_ID", Required = true, Description = "Identifier of the metric, for example first_step_push. The files are named after it." };
        var folder = new Option<string?>("--folder") { HelpName = "NAME", Description = "Folder of src/Analytics.Metrics; without it that of the trials the sketch is of." };
        var label = new Option<string?>("--label") { HelpName = "TEXT", Description = "Label for charts and tables, in the place of the sketch's." };
        var meaning = new Option<string?>("--meaning") { HelpName = "TEXT", Description = "What it measures, in one plain sentence, in the place of the sketch's." };
        var formula = new Option<string?>("--formula") { HelpName = "TEXT", Description = "The formula in words, symbols with units, in the place of the sketch's; without either the line of C# stands there." };
        var waive = new Option<string?>("--waive") { HelpName = "REASON", Description = "Why no figure from outside can be held against it; without it the checks are left blank, and fail until they are filled in." };
        var repository = new Option<string>("--repository") { HelpName = "DIR", Description = "The clone of the repository.", DefaultValueFactory = _ => "." };
        var noTests = new Option<bool>("--no-tests") { Description = "Write only; do not build and test." };
        var command = new Command("promote", "Makes a sketch a metric of the library: source file, tests on frozen data, catalogue and its page. For those who work on this program's code.")
        {
            file, name, folder, label, meaning, formula, waive, repository, noTests,
        };
        command.SetAction(async (parsed, cancellation) =>
        {
            var options = new PromoteOptions(parsed.GetRequiredValue(file), parsed.GetRequiredValue(name))
            {
                Folder = parsed.GetValue(folder),
                Label = parsed.GetValue(label),
                Meaning = parsed.GetValue(meaning),
                Formula = parsed.GetValue(formula),
                Waive = parsed.GetValue(waive),
                Repository = parsed.GetRequiredValue(repository),
                WithTests = !parsed.GetValue(noTests),
            };
            var plan = await Promotion.PlanAsync(options).ConfigureAwait(false);
            new PlanWriter().Write(plan);
            PromotionText.Written(screen.Out, plan);
            if (!options.WithTests) return ExitCode.Fine;
            screen.Error.WriteLine($"Building and testing {Clone.Tests} ...");
            var (results, errors) = await NewTests.RunAsync(plan, cancellation).ConfigureAwait(false);
            if (results is null)
            {
                PromotionText.NotBuilt(screen.Error, errors);
                return ExitCode.DataOrCell;
            }

            PromotionText.Tested(screen.Out, plan, results);
            return results.Failed.All(f => f.IsBlank) ? ExitCode.Fine : ExitCode.DataOrCell;
        });
        return command;
    }
}
