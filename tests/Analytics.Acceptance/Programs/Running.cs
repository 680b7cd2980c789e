using System.Diagnostics;

namespace Analytics.Acceptance.Programs;

/// <summary>Runs a program to its end.</summary>
internal static class Running
{
    /// <summary>Runs it.</summary>
    /// <param name="program">The program.</param>
    /// <param name="arguments">Its arguments.</param>
    /// <param name="folder">Where it starts; the working copy without it.</param>
    /// <param name="environment">What it gets besides the environment of the tests; null takes a name away.</param>
    public static (int Code, string Out, string Error) Run(string program, IEnumerable<string> arguments, string? folder = null, IReadOnlyDictionary<string, string?>? environment = null)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder ?? Repository.Root,
        };
        var tools = Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".dotnet", "tools");
        start.Environment["PATH"] = Environment.GetEnvironmentVariable("PATH") + Path.PathSeparator + tools;
        start.Environment["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1";
        foreach (var (name, value) in environment ?? new Dictionary<string, string?>())
        {
            if (value is null) start.Environment.Remove(name);
            else start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.GetAwaiter().GetResult());
    }
}
