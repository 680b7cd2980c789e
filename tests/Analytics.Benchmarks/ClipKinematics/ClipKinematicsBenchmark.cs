using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Analytics.Metrics.Motion;

namespace Analytics.Benchmarks.ClipKinematics;

/// <summary>
/// Clips of 300 frames and 8 markers a second on one core: residual analysis (20 cut-offs, 16 coordinates), filtering, velocities, accelerations and two segment angles through
/// the public typed surface, beside SciPy's filtfilt and NumPy, both by processor time. And the memory for 1,000 clips beside that for 10,000.
/// </summary>
internal sealed class ClipKinematicsBenchmark : IBenchmark
{
    private const int Set = 20;
    private const int Rounds = 5;
    private const double BudgetSeconds = 4;
    private static readonly string[] Checks = ["cut-off Hz", "speed m/s", "acceleration m/s²", "lean °"];
    private static readonly JsonSerializerOptions PeerJson = new() { PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower };

    public string Name => "clip-kinematics";

    public string What => "digitised clips per second beside SciPy filtfilt and NumPy (needs python3 with scipy; --python PATH)";

    public int Run(string[] args)
    {
        DigitisedClip[] clips = [.. Enumerable.Range(0, Set).Select(MadeUpClips.Make)];
        var check = new ClipWork();
        foreach (var clip in clips) check.Do(clip);
        double[] rates = [.. Enumerable.Range(0, Rounds).Select(_ => ClipsPerSecond(clips)).Order()];
        if (Peer(args is ["--python", var path] ? path : "/usr/bin/python3") is not { } peer) return 2;

        var ours = rates[Rounds / 2];
        for (var i = 0; i < Checks.Length; i++) Say($"mean {Checks[i],-18} {check.Means[i],16:0.0000000000}   SciPy {peer.Checks[i],16:0.0000000000}");
        Say($"this library              {ours,8:#,0} clips/s, 1,000 clips in {1000 / ours:0.000} s   (rounds {rates[0]:#,0} to {rates[^1]:#,0})");
        Say($"SciPy, clip by clip       {peer.OneByOne,8:#,0} clips/s, 1,000 clips in {1000 / peer.OneByOne:0.000} s   ratio {ours / peer.OneByOne:0.0}");
        Say($"SciPy, {Set} clips at once  {peer.AtOnce,8:#,0} clips/s, 1,000 clips in {1000 / peer.AtOnce:0.000} s   ratio {ours / peer.AtOnce:0.0}");
        Say($"(SciPy {peer.Scipy}, NumPy {peer.Numpy}, processor time, one thread)");
        foreach (var count in new[] { 1_000, 10_000 })
        {
            var (bytes, held, peak) = Memory(count);
            Say($"{count,6:#,0} clips made and analysed one after another: {bytes / count / 1024:0} kB allocated a clip, {held / 1024.0:0} kB more held at the end, working set at most {peak / 1048576.0:0} MB");
        }
        return 0;
    }

    private static double ClipsPerSecond(DigitisedClip[] clips)
    {
        var work = new ClipWork();
        for (var i = 0; i < 20; i++) foreach (var clip in clips) work.Do(clip); // past tiered compilation
        // All threads of this process: what the collector and the compiler cost is in it.
        var (before, start, spent) = (work.Clips, Environment.CpuUsage.TotalTime.TotalSeconds, 0.0);
        while (spent < BudgetSeconds / Rounds)
        {
            foreach (var clip in clips) work.Do(clip);
            spent = Environment.CpuUsage.TotalTime.TotalSeconds - start;
        }
        return (work.Clips - before) / spent;
    }

    private static (long Allocated, long Held, long Peak) Memory(int clips)
    {
        var work = new ClipWork();
        var (held, allocated, peak) = (GC.GetTotalMemory(true), GC.GetAllocatedBytesForCurrentThread(), 0L);
        for (var i = 0; i < clips; i++)
        {
            work.Do(MadeUpClips.Make(i % Set));
            if (i % 100 == 0) peak = Math.Max(peak, Environment.WorkingSet);
        }
        allocated = GC.GetAllocatedBytesForCurrentThread() - allocated;
        return (allocated, GC.GetTotalMemory(true) - held, peak);
    }

    private static PeerResult? Peer(string python)
    {
        var script = Path.Combine(AppContext.BaseDirectory, "oracles", "clip_kinematics_speed.py");
        var start = new ProcessStartInfo(python) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(script);
        start.ArgumentList.Add(JsonSerializer.Serialize(new { clips = Set, budget = BudgetSeconds }));
        foreach (var variable in new[] { "OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS" }) start.Environment[variable] = "1";
        try
        {
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            if (process.ExitCode == 0) return JsonSerializer.Deserialize<PeerResult>(output, PeerJson);
            Console.Error.WriteLine($"{python} could not run {script}: {errors.Result}");
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            Console.Error.WriteLine($"No comparison: {python} does not start ({missing.Message}). Install python3 with scipy or give --python PATH.");
        }
        return null;
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    private sealed record PeerResult(string Scipy, string Numpy, double OneByOne, double AtOnce, double[] Checks);
}
