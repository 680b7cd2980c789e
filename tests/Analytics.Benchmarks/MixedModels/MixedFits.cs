using System.Globalization;
using Analytics.Statistics.MixedModels;

namespace Analytics.Benchmarks.MixedModels;

/// <summary>
/// Random intercept and slope by REML, data to estimates, on one thread: the sleep study (18 subjects, 10 days) and invented squads of 2,000
/// athletes with 6 rows each, all on the same days and on days of their own; beside lmer without its summary, and statsmodels if it is there.
/// </summary>
internal sealed class MixedFits : IBenchmark
{
    private const double BudgetSeconds = 3;
    private const int Rounds = 5;

    public string Name => "mixed-sleepstudy";

    public string What => "mixed-model fits beside R lme4 and, if installed, statsmodels (--rscript PATH, --python PATH)";

    public int Run(string[] args)
    {
        var missing = false;
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            foreach (var (name, rows) in new[] { ("sleep study, 18 × 10", Sleep()), ("2,000 × 6, same days", Squad(false)), ("2,000 × 6, own days", Squad(true)) })
                missing |= !Compare(name, rows, Path.Combine(folder.FullName, "rows.csv"), args);
        }
        finally
        {
            folder.Delete(true);
        }

        return missing ? 2 : 0;
    }

    private static bool Compare(string name, Rows rows, string file, string[] args)
    {
        File.WriteAllLines(file, [.. rows.Y.Select((y, i) => string.Create(CultureInfo.InvariantCulture, $"{y:R},{rows.X[i]:R},{rows.Group[i]}")).Prepend("y,x,g")]);
        var fit = Median(() => Seconds(rows, _ => { }));
        var table = Median(() => Seconds(rows, m => _ = m.FixedEffects[1].P));
        var model = rows.Design().Fit().Require();
        Say($"{name}: processor time of one fit on one thread");
        Say($"  this library, estimates            {1e3 * fit,10:0.0000} ms                 −2 log L {model.MinusTwoLogLikelihood:0.000000}   {model.Iterations} steps");
        Say($"  this library, with df and p        {1e3 * table,10:0.0000} ms");
        var budget = BudgetSeconds.ToString(CultureInfo.InvariantCulture);
        var r = PeerProcess.Run<Peer>(Option(args, "--rscript", "Rscript"), "mixed_speed.R", [file, budget]);
        var python = PeerProcess.Run<Peer>(Option(args, "--python", "/usr/bin/python3"), "mixed_speed.py", [file, budget]);
        foreach (var peer in new[] { r, python }.OfType<Peer>())
        {
            Say($"  {peer.Version,-34} {1e3 * peer.Seconds,10:0.0000} ms   ratio {peer.Seconds / fit,6:0}   −2 log L {peer.Criterion:0.000000}");
            if (peer.LeastSeconds < peer.Seconds)
                Say($"  {"  the same without derivative check",-34} {1e3 * peer.LeastSeconds,9:0.0000} ms   ratio {peer.LeastSeconds / fit,6:0}");
        }

        return r is not null;
    }

    private static double Seconds(Rows rows, Action<MixedModel> use)
    {
        for (var (i, until) = (0, Environment.CpuUsage.TotalTime.TotalSeconds + 1); i < 100 || Environment.CpuUsage.TotalTime.TotalSeconds < until; i++)
            use(rows.Design().Fit().Require()); // past tiered compilation
        var (count, start, spent) = (0, Environment.CpuUsage.TotalTime.TotalSeconds, 0.0);
        while (spent < BudgetSeconds / Rounds)
        {
            // From the data on, as the others do: the design, its columns and checks are in it.
            for (var i = 0; i < 10; i++) use(rows.Design().Fit().Require());
            count += 10;
            spent = Environment.CpuUsage.TotalTime.TotalSeconds - start;
        }

        return spent / count;
    }

    private static Rows Sleep()
    {
        var lines = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "oracles", "mixed-sleepstudy.csv")).Skip(1).Select(l => l.Split(',')).ToList();
        double[] Column(int c) => [.. lines.Select(l => double.Parse(l[c], CultureInfo.InvariantCulture))];
        return new(Column(0), Column(1), [.. lines.Select(l => l[2])]);
    }

    // Made up: level 100 ± 8, gain 0.5 ± 0.3 a day, error 3.
    private static Rows Squad(bool ownDays)
    {
        var random = new Random(1);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var (y, x, group) = (new List<double>(), new List<double>(), new List<string>());
        for (var athlete = 0; athlete < 2000; athlete++)
        {
            var (level, gain, name) = (100 + (8 * Normal()), 0.5 + (0.3 * Normal()), $"a{athlete}");
            for (var day = 0; day < 6; day++)
            {
                var when = ownDays ? (7 * day) + random.Next(7) : 7 * day;
                y.Add(level + (gain * when) + (3 * Normal()));
                x.Add(when);
                group.Add(name);
            }
        }

        return new([.. y], [.. x], [.. group]);
    }

    private static double Median(Func<double> measure)
    {
        var values = Enumerable.Range(0, Rounds).Select(_ => measure()).Order().ToArray();
        return values[values.Length / 2];
    }

    private static string Option(string[] args, string name, string usual)
        => Array.IndexOf(args, name) is var at and >= 0 && at + 1 < args.Length ? args[at + 1] : usual;

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    private sealed record Rows(double[] Y, double[] X, string[] Group)
    {
        public ModelDesign Design() => ModelDesign.Of(Y, Group).Covariate("x", X).RandomIntercept().RandomSlope("x");
    }

    private sealed record Peer(string Version, double Seconds, double LeastSeconds, double Criterion);
}
