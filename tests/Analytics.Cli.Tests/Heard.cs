namespace Analytics.Cli.Tests;

/// <summary>Runs a command line in this process and keeps what it says.</summary>
internal sealed record Heard(int ExitCode, string Out, string Error)
{
    public string LastLine => Out.TrimEnd().Split('\n')[^1];

    public static async Task<Heard> RunAsync(params string[] args)
    {
        using StringWriter output = new(), error = new();
        var code = await CommandLine.RunAsync(args, new Screen(output, error, IsTerminal: false));
        return new Heard(code, output.ToString(), error.ToString());
    }
}
