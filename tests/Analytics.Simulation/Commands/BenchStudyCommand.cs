using Analytics.Simulation.BenchStudy;
using Analytics.Simulation.BenchStudy.Cases;
using Analytics.Simulation.BenchStudy.Squads;

namespace Analytics.Simulation.Commands;

public static class BenchStudyCommand
{
    public const string Usage = "bench-study";

    public static int Run(Arguments arguments, TextWriter output)
    {
        var cases = BenchCases.All.Where(c => arguments.Text("--kinds", "") is var k && (k.Length == 0 || k.Contains(c.Kind.ToString()))).ToList();
        var threads = (int)arguments.Number("--threads", 1);
        var n = (int)arguments.Number("--squads", 4);
        int[] days = arguments.Text("--days", "all") == "all" ? [0, 1, 2, 3, 4] : [0, 1];
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var choice = SquadChoice.All[(int)arguments.Number("--choice", 0)];
        BenchStudyRun.Each(n, 5000, 1, days, s => 0);
        output.WriteLine($"draw {clock.Elapsed.TotalMilliseconds / n} ms");
        clock.Restart();
        var all = BenchStudyRun.Each(n, 5000, threads, days, s => { var q = s.Squad(choice); return cases.Select(c => { var t = clock.Elapsed; var o = BenchOutcome.Of(c, s, q); return (o, (clock.Elapsed - t).TotalMilliseconds); }).ToList(); });
        output.WriteLine($"judge {clock.Elapsed.TotalMilliseconds / n} ms");
        for (var i = 0; i < cases.Count; i++)
        {
            output.WriteLine($"{cases[i].Name,-70} {string.Join(" ", all.GroupBy(a => a[i].o.Verdict).OrderByDescending(g => g.Count()).Select(g => g.Key + ":" + g.Count()))}  {all.Average(a => a[i].Item2):0.0} ms own {all[0][i].o.Own} icc {all[0][i].o.Icc} {all[0][i].o.TrueIcc}");
            if (arguments.Text("--why", "") == "y") foreach (var g in all.GroupBy(a => a[i].o.Verdict)) output.WriteLine("      " + g.Key + ": " + g.First()[i].o.Why);
        }

        return 0;
    }
}
