using System.Diagnostics;
using System.Globalization;
using Analytics.Planning.Plans;
using Analytics.Planning.Solving;

namespace Analytics.Benchmarks.WeekPlans;

/// <summary>What a training week costs to plan, against the size of the squad.</summary>
internal sealed class WeekPlansBenchmark : IBenchmark
{
    private const int Usual = 30;

    private static readonly int[] s_squads = [10, Usual, 60, 120];

    public string Name => "week-plans";

    public string What => "training weeks of four days for squads of 10 to 120, with the distance from the bound [ROUNDS]";

    public int Run(string[] args)
    {
        var rounds = args.Length > 0 && int.TryParse(args[0], CultureInfo.InvariantCulture, out var given) && given > 0 ? given : 3;
        var kit = InventedWeek.Shipped();
        Console.WriteLine(FormattableString.Invariant($"{kit.Exercises.All.Count} exercises, {kit.Schemes.Count} set schemes, 4 days; {Environment.ProcessorCount} processors"));
        // Compiling and loading the solver are not what is asked.
        WeekPlanner.Plan(InventedWeek.Of(kit, 4));
        var results = s_squads.Select(s => (Squad: s, Plans: Enumerable.Range(0, rounds).Select(_ => Time(InventedWeek.Of(kit, s))).ToList())).ToList();
        var usual = results.Single(r => r.Squad == Usual).Plans.Min(p => p.Seconds);
        foreach (var (squad, plans) in results)
        {
            if (plans.Exists(p => p.Plan is null) || plans.Select(p => Text(p.Plan!)).Distinct().Count() > 1)
            {
                Console.Error.WriteLine(FormattableString.Invariant($"{squad} players: no plan, or another one from round to round."));
                return 2;
            }

            var quality = plans[0].Plan!.Quality;
            Console.WriteLine(FormattableString.Invariant($"{squad,4} players in {InventedWeek.Groups(squad)} groups: best {plans.Min(p => p.Seconds):0.0} s, worst {plans.Max(p => p.Seconds):0.0} s, processor {plans.Min(p => p.Processor):0.0} s, {plans.Min(p => p.Seconds) / usual:0.00} of {Usual} players; at most {100 * quality.Gap:0.0} % from the bound{(quality.HitClock ? ", stopped by the clock" : "")}"));
        }

        return 0;
    }

    private static (double Seconds, double Processor, WeekPlan? Plan) Time(PlanProblem problem)
    {
        var (clock, processor) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
        var plan = WeekPlanner.Plan(problem).Plan;
        return (clock.Elapsed.TotalSeconds, (Environment.CpuUsage.TotalTime - processor).TotalSeconds, plan);
    }

    private static string Text(WeekPlan plan) => string.Join('\n', plan.Sessions.Select(s => $"{s.Slot.Date:o} {s.Group} {s.Players[0]}: {string.Join(", ", s.Shared.Concat(s.Own.Select(o => o.Item)).Select(i => $"{i.Exercise.Id} {i.Scheme.Id}"))}"));
}
