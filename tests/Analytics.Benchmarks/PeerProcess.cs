using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;

namespace Analytics.Benchmarks;

/// <summary>Runs another tool on one thread and reads the line of JSON it prints.</summary>
internal static class PeerProcess
{
    private static readonly JsonSerializerOptions s_json = new() { PropertyNameCaseInsensitive = true };

    /// <summary>What the script printed; null, with words on the error stream, when the tool is missing or fails.</summary>
    public static T? Run<T>(string program, string script, IEnumerable<string> arguments)
        where T : class
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
            if (process.ExitCode == 0) return JsonSerializer.Deserialize<T>(output, s_json);
            Console.Error.WriteLine($"No comparison: {program} could not run {script}: {errors.Result.Trim().Split('\n')[^1]}");
        }
        catch (Win32Exception missing)
        {
            Console.Error.WriteLine($"No comparison: {program} does not start ({missing.Message}). Install it or say where it is.");
        }

        return null;
    }
}
