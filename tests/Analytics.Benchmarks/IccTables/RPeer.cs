using System.Diagnostics;
using System.Globalization;

namespace Analytics.Benchmarks.IccTables;

/// <summary>What R needed for the same tables.</summary>
/// <param name="Version">Version of R.</param>
/// <param name="Plain">Seconds of the lean function for all tables.</param>
/// <param name="First">Estimate and limits of the first table.</param>
/// <param name="Psych">Version of psych; null when it is not installed.</param>
/// <param name="PsychTables">Tables psych was given.</param>
/// <param name="PsychPerTable">Seconds of psych a table.</param>
internal sealed record RPeer(string Version, double Plain, double[] First, string? Psych, int PsychTables, double? PsychPerTable)
{
    public static RPeer? Run(string rscript, double?[][][] tables, int athletes, int trials)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllLines(file, tables.Select(t => string.Join(',', t.SelectMany(r => r).Select(v => v!.Value.ToString("R", CultureInfo.InvariantCulture)))));
            var start = new ProcessStartInfo(rscript) { RedirectStandardOutput = true, RedirectStandardError = true };
            foreach (var argument in new[] { Path.Combine(AppContext.BaseDirectory, "oracles", "icc_speed.R"), file, $"{athletes}", $"{trials}" }) start.ArgumentList.Add(argument);
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            if (process.ExitCode == 0) return Read(output);
            Console.Error.WriteLine($"No comparison: {rscript} ended with {process.ExitCode}: {errors.Result}");
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            Console.Error.WriteLine($"No comparison: {rscript} does not start ({missing.Message}). Install R or give --rscript PATH.");
        }
        finally
        {
            File.Delete(file);
        }

        return null;
    }

    private static RPeer Read(string output)
    {
        var values = output.Split('\n').Where(l => l.Contains('=', StringComparison.Ordinal)).Select(l => l.Split('=', 2)).ToDictionary(p => p[0], p => p[1]);
        double Number(string name) => double.Parse(values[name], CultureInfo.InvariantCulture);
        double[] first = [.. values["plain_first"].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
        return values.TryGetValue("psych", out var psych)
            ? new(values["r"], Number("plain_seconds"), first, psych, (int)Number("psych_tables"), Number("psych_seconds") / Number("psych_tables"))
            : new(values["r"], Number("plain_seconds"), first, null, 0, null);
    }
}
