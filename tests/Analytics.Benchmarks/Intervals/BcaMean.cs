using System.Globalization;
using System.Runtime.Intrinsics;
using Analytics.Statistics.Resampling;

namespace Analytics.Benchmarks.Intervals;

/// <summary>
/// A BCa interval of a mean of 60 values from 10,000 resamples, data to limits, on one thread: beside SciPy and R in the same run, by
/// processor time. And what the number of resamples does to memory.
/// </summary>
internal sealed class BcaMean : IBenchmark
{
    private const int Resamples = 10_000;
    // One long reading a side: the clock of processor time may tick coarsely.
    private const double BudgetSeconds = 5;

    // Made-up jump heights, cm, with a tail to the right.
    private static readonly double[] Values = [.. Enumerable.Range(0, 60).Select(i => 38 + 0.002 * (i * i * 37 % 3600) + (i * 17 % 11))];

    public string Name => "bca-mean";

    public string What => "BCa interval of a mean beside scipy.stats.bootstrap and R boot (--python PATH, --rscript PATH)";

    public int Run(string[] args)
    {
        var ours = SecondsPerInterval();
        var limits = Interval(1, Resamples).Limits!.Value;
        Say($"n = {Values.Length}, B = {Resamples}, processor time of one interval on one thread");
        Say($"  this library                       {1e3 * ours,9:0.000} ms              {limits.Low:0.0000} to {limits.High:0.0000}   (512-bit vectors: {(Vector512.IsHardwareAccelerated ? "yes" : "no")})");
        var numbers = Values.Select(v => v.ToString("R", CultureInfo.InvariantCulture)).ToArray();
        var budget = BudgetSeconds.ToString(CultureInfo.InvariantCulture);
        var peers = new[]
        {
            Peer.Run(Option(args, "--python", "/usr/bin/python3"), "bca_mean_speed.py",
                [$$"""{"values":[{{string.Join(',', numbers)}}],"resamples":{{Resamples}},"budget":{{budget}}}"""]),
            Peer.Run(Option(args, "--rscript", "Rscript"), "bca_mean_speed.R", [Resamples.ToString(CultureInfo.InvariantCulture), budget, .. numbers]),
        };
        foreach (var peer in peers.OfType<Peer>())
            Say($"  {peer.Version,-34} {1e3 * peer.Seconds,9:0.000} ms   ratio {peer.Seconds / ours,4:0}   {peer.Low:0.0000} to {peer.High:0.0000}");
        foreach (var b in new[] { 1_000, 10_000, 100_000 }) Memory(b);
        return peers.Any(p => p is null) ? 2 : 0;
    }

    private static BootstrapInterval Interval(int seed, int resamples)
        => Bootstrap.Mean(Values, new() { Resamples = resamples, Seed = (ulong)seed }).Interval();

    private static double SecondsPerInterval()
    {
        const int batch = 200;
        for (var i = 0; i < 5 * batch; i++) Kept(Interval(i, Resamples)); // past tiered compilation
        // All threads of this process: what the collector and the compiler cost is in it.
        var (count, start, spent) = (0, Environment.CpuUsage.TotalTime.TotalSeconds, 0.0);
        while (spent < BudgetSeconds)
        {
            for (var i = 0; i < batch; i++) Kept(Interval(count + i, Resamples));
            count += batch;
            spent = Environment.CpuUsage.TotalTime.TotalSeconds - start;
        }

        return spent / count;
    }

    private static void Kept(BootstrapInterval interval)
    {
        if (interval.Limits is null) throw new InvalidOperationException(interval.Explanation);
    }

    private static void Memory(int resamples)
    {
        Interval(1, resamples);
        var start = GC.GetAllocatedBytesForCurrentThread();
        var made = Bootstrap.Mean(Values, new() { Resamples = resamples });
        var drawn = GC.GetAllocatedBytesForCurrentThread() - start;
        made.Interval();
        var all = GC.GetAllocatedBytesForCurrentThread() - start;
        Say($"  B = {resamples,7:#,0}: {drawn,9:#,0} bytes to draw ({drawn - 8.0 * resamples:#,0} beside the statistics), {all,9:#,0} with the interval");
    }

    private static string Option(string[] args, string name, string usual)
        => Array.IndexOf(args, name) is var at and >= 0 && at + 1 < args.Length ? args[at + 1] : usual;

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
