using System.Diagnostics;

namespace Analytics.Acceptance.Programs;

/// <summary>Runs a program to its end.</summary>
internal static class Running
{
    public static (int Code, string Out, string Error) Run(string program, IEnumerable<string> arguments, string? folder = null)
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
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.GetAwaiter().GetResult());
    }
}
