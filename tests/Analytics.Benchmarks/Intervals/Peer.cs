using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;

namespace Analytics.Benchmarks.Intervals;

/// <summary>What another tool measured of itself, one line of JSON.</summary>
internal sealed record Peer(string Version, double Seconds, double Low, double High)
{
    private static readonly JsonSerializerOptions s_json = new() { PropertyNameCaseInsensitive = true };

    /// <summary>Runs a script of tests/oracles on one thread; null, with words on the error stream, when the tool is missing or fails.</summary>
    public static Peer? Run(string program, string script, IEnumerable<string> arguments)
    {
        var path = Path.Combine(AppContext.BaseDirectory, "oracles", script);
        var start = new ProcessStartInfo(program, [path, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var variable in new[] { "OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS" }) start.Environment[variable] = "1";
        try
        {
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            if (process.ExitCode == 0) return JsonSerializer.Deserialize<Peer>(output, s_json);
            Console.Error.WriteLine($"No comparison: {program} could not run {script}: {errors.Result}");
        }
        catch (Win32Exception missing)
        {
            Console.Error.WriteLine($"No comparison: {program} does not start ({missing.Message}). Install it or say where it is.");
        }

        return null;
    }
}
