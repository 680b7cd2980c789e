using Analytics.Benchmarks;
using Analytics.Benchmarks.AthletePages;
using Analytics.Benchmarks.ClipKinematics;
using Analytics.Benchmarks.IccTables;
using Analytics.Benchmarks.Intervals;
using Analytics.Benchmarks.MixedModels;
using Analytics.Benchmarks.NotebookRuns;
using Analytics.Benchmarks.SeasonHistory;
using Analytics.Benchmarks.SeasonRows;
using Analytics.Benchmarks.WeekPlans;

// One command a benchmark; each prints what it measured and the ratio that matters. Nothing here is asserted by a timed test.
IBenchmark[] benchmarks = [new SplitFits(), new SeasonRowsBenchmark(), new NotebookRunBenchmark(), new AthletePagesBenchmark(), new BcaMean(), new IccTablesBenchmark(), new MixedFits(), new ClipKinematicsBenchmark(), new SeasonHistoryBenchmark(), new SeasonReportBenchmark(), new WeekPlansBenchmark()];

var chosen = benchmarks.FirstOrDefault(b => b.Name == args.FirstOrDefault());
if (chosen is null)
{
    Console.Error.WriteLine("usage: dotnet run -c Release --project tests/Analytics.Benchmarks -- COMMAND");
    foreach (var benchmark in benchmarks) Console.Error.WriteLine($"  {benchmark.Name,-16} {benchmark.What}");
    return 1;
}
return chosen.Run(args[1..]);
