using System.CommandLine;
using Analytics.Runner;

namespace Analytics.Cli.Commands;

/// <summary><c>help [COMMAND]</c>: the same as <c>--help</c> after the command, for those who ask in this order.</summary>
internal static class HelpCommand
{
    public static Command Make(RootCommand root)
    {
        var about = new Argument<string?>("command") { HelpName = "COMMAND", Arity = ArgumentArity.ZeroOrOne, Description = "The command to explain; without one, the whole program." };
        var command = new Command("help", "Explains a command, or the whole program.") { about };
        command.SetAction(parsed => root.Parse([.. Known(root, parsed.GetValue(about)), "--help"]).Invoke(parsed.InvocationConfiguration));
        return command;
    }

    private static string[] Known(RootCommand root, string? name)
    {
        if (name is null)
            return [];
        var names = root.Subcommands.Select(c => c.Name).ToList();
        return names.Contains(name)
            ? [name]
            : throw new NotebookException(Fault.Usage, $"There is no command '{name}' to explain. There are: {string.Join(", ", names)}.");
    }
}
