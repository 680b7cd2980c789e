using System.Diagnostics;

namespace Analytics.Benchmarks.AthletePages;

/// <summary>One run of the built program in a process of its own.</summary>
/// <param name="Seconds">By the clock.</param>
/// <param name="Processor">Seconds of processor time, as seen within 20 ms of its end.</param>
/// <param name="PeakMegabytes">Largest working set.</param>
internal sealed record ProgramRun(double Seconds, double Processor, double PeakMegabytes)
{
    private static readonly TimeSpan Interval = TimeSpan.FromMilliseconds(20);

    /// <summary>Runs it; null, with words on the error stream, when it fails.</summary>
    public static ProgramRun? Of(string program, IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo("dotnet", [program, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        long peak = 0;
        var processor = TimeSpan.Zero;
        // What a process used can only be asked for while it is there.
        while (!process.WaitForExit(Interval))
        {
            try
            {
                process.Refresh();
                peak = Math.Max(peak, process.PeakWorkingSet64);
                processor = process.TotalProcessorTime;
            }
            catch (InvalidOperationException)
            {
                break;
            }
        }

        process.WaitForExit();
        var seconds = clock.Elapsed.TotalSeconds;
        if (process.ExitCode == 0)
            return new ProgramRun(seconds, processor.TotalSeconds, peak / 1048576.0);
        Console.Error.WriteLine($"The program ended with code {process.ExitCode}.\n{output.GetAwaiter().GetResult()}{error.GetAwaiter().GetResult()}");
        return null;
    }
}
