using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Benchmarks;

/// <summary>
/// Complete split fits per second on one core (parameters, covariance, residuals, how it ended) beside SciPy's curve_fit
/// on the same model and data in the same run, both by processor time, so that a busy machine does not tilt the ratio.
/// </summary>
internal sealed class SplitFits : IBenchmark
{
    private const double BudgetSeconds = 3;
    private const int Rounds = 5;

    // Made-up runs: 10-20-40 yd as on a testing evening, and five metre gates.
    private static readonly (string Name, double[] Metres, double[] Seconds)[] Runs =
    [
        ("3 gates, 10-20-40 yd", [9.144, 18.288, 36.576], [1.58, 2.66, 4.58]),
        ("5 gates, 5-10-20-30-40 m", [5, 10, 20, 30, 40], [1.37, 2.12, 3.40, 4.61, 5.80]),
    ];

    public string Name => "split-fits";

    public string What => "split fits per second beside scipy.optimize.curve_fit (needs python3 with scipy; --python PATH)";

    public int Run(string[] args)
    {
        var python = args is ["--python", var path] ? path : "/usr/bin/python3";
        foreach (var (name, metres, seconds) in Runs)
        {
            Split[] splits = [.. metres.Zip(seconds, (m, s) => new Split(Length.FromMetres(m), Duration.FromSeconds(s)))];
            var ours = Median(() => FitsPerSecond(splits));
            var fit = SplitFitter.Fit(splits);
            var bytes = BytesPerFit(splits);
            if (Peer(python, metres, seconds) is not { } peer) return 2;

            var (v, tau) = (fit.Curve!.TopSpeed, fit.Curve.TimeConstant);
            Say($"{name}: V {v.Value:0.00000000} ± {v.StandardError:0.00000000} m/s, T {tau.Value:0.00000000} ± {tau.StandardError:0.00000000} s, {fit.Numerics!.Iterations} iterations, {bytes} bytes a fit");
            Say($"  curve_fit found V {peer.Parameters[0]:0.00000000} ± {peer.StandardErrors[0]:0.00000000}, T {peer.Parameters[1]:0.00000000} ± {peer.StandardErrors[1]:0.00000000}");
            Say($"  this library                    {ours,12:#,0} fits/s");
            Say($"  curve_fit, analytic Jacobian    {peer.Analytic,12:#,0} fits/s   ratio {ours / peer.Analytic:0}");
            Say($"  curve_fit, difference Jacobian  {peer.Differences,12:#,0} fits/s   ratio {ours / peer.Differences:0}");
            Say($"  (SciPy {peer.Scipy}, NumPy {peer.Numpy}, processor time, one thread)");
        }
        return 0;
    }

    private static double FitsPerSecond(Split[] splits)
    {
        const int batch = 2000;
        for (var i = 0; i < 20 * batch; i++) Kept(SplitFitter.Fit(splits)); // past tiered compilation
        // All threads of this process: what the collector and the compiler cost is in it.
        var (count, start, spent) = (0L, Environment.CpuUsage.TotalTime.TotalSeconds, 0.0);
        while (spent < BudgetSeconds / Rounds)
        {
            for (var i = 0; i < batch; i++) Kept(SplitFitter.Fit(splits));
            count += batch;
            spent = Environment.CpuUsage.TotalTime.TotalSeconds - start;
        }
        return count / spent;
    }

    // Reads the result, so that no fit can be optimised away.
    private static void Kept(SplitFit fit)
    {
        if (fit.Curve is null) throw new InvalidOperationException(fit.Explanation);
    }

    private static double Median(Func<double> measure)
    {
        var values = Enumerable.Range(0, Rounds).Select(_ => measure()).Order().ToArray();
        return values[values.Length / 2];
    }

    private static long BytesPerFit(Split[] splits)
    {
        const int fits = 1000;
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < fits; i++) Kept(SplitFitter.Fit(splits));
        return (GC.GetAllocatedBytesForCurrentThread() - before) / fits;
    }

    private static PeerResult? Peer(string python, double[] metres, double[] seconds)
    {
        var script = Path.Combine(AppContext.BaseDirectory, "oracles", "curve_fit_speed.py");
        // SciPy gets good start values for nothing: a little above the last interval's speed, and the time left over.
        var speed = 1.03 * (metres[^1] - metres[^2]) / (seconds[^1] - seconds[^2]);
        double[] guess = [speed, seconds[^1] - (metres[^1] / speed)];
        var start = new ProcessStartInfo(python) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(script);
        start.ArgumentList.Add(JsonSerializer.Serialize(new { metres, seconds, guess, budget = BudgetSeconds }));
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

    private static readonly JsonSerializerOptions PeerJson = new() { PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower };

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    private sealed record PeerResult(string Scipy, string Numpy, double Analytic, double Differences, double[] Parameters, double[] StandardErrors);
}
