using System.Diagnostics;

namespace Analytics.Cli.Tests;

/// <summary>The program in a process of its own, for what only shows there: exit codes of dying cells, signals.</summary>
internal sealed class BuiltProgram : IDisposable
{
    private readonly Process process;
    private readonly Task<string> output;
    private readonly Task<string> error;

    public BuiltProgram(params string[] args) : this(new Dictionary<string, string>(), args)
    {
    }

    public BuiltProgram(Dictionary<string, string> environment, params string[] args)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "analytics.dll"), .. args])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        process = Process.Start(start)!;
        output = process.StandardOutput.ReadToEndAsync();
        error = process.StandardError.ReadToEndAsync();
    }

    /// <summary>Runs it to its end.</summary>
    public static async Task<Heard> RunAsync(params string[] args)
    {
        using var program = new BuiltProgram(args);
        return await program.EndAsync();
    }

    public int Id => process.Id;

    public async Task<Heard> EndAsync()
    {
        await process.WaitForExitAsync();
        return new Heard(process.ExitCode, await output, await error);
    }

    public void Dispose()
    {
        if (!process.HasExited)
            process.Kill(entireProcessTree: true);
        process.Dispose();
    }
}
