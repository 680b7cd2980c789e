using Analytics.Simulation.Demo.Files;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Testing;

/// <summary>Lifts: heaviest singles on most days, sets of repetitions in March and for those who always lift in sets.</summary>
public static class LiftTest
{
    /// <summary>Smallest step on the bar, lb.</summary>
    private const double Step = 5;

    public static Sheet Sheet() => new("lifts", "athlete_id", "lift", "set", "load_lb", "reps", "rir");

    public static void Run(TestBench bench, Sheet sheet)
    {
        var inSets = bench.Day == SeasonCalendar.March || bench.Player.LiftsInSets;
        Lift(bench, sheet, "back_squat", bench.Form.SquatPounds, inSets);
        if (bench.Day == SeasonCalendar.March && bench.Form.BenchPounds > 235) RepetitionsAt225(bench, sheet);
        else Lift(bench, sheet, "bench_press", bench.Form.BenchPounds, inSets);
        if (bench.Day == SeasonCalendar.March) Lift(bench, sheet, "hang_clean", bench.Form.CleanPounds * bench.Player.HangCleanShare, true);
        else Lift(bench, sheet, "power_clean", bench.Form.CleanPounds, false);
    }

    private static void Lift(TestBench bench, Sheet sheet, string lift, double maximum, bool inSets)
    {
        if (!bench.Does(lift)) return;
        var random = bench.Random(lift);
        if (inSets) SetOfRepetitions(bench, sheet, lift, maximum, random);
        else HeaviestSingle(bench, sheet, lift, maximum, random);
    }

    /// <summary>Singles in steps until a miss: the result is the last step at or below the day's maximum.</summary>
    private static void HeaviestSingle(TestBench bench, Sheet sheet, string lift, double maximum, RandomNumbers random)
    {
        var top = Math.Floor(maximum / Step) * Step;
        var set = 1;
        if (random.Chance(0.4)) sheet.Add(bench.Player.Id, lift, set++, top - (1 + random.Below(3)) * Step, 1, null);
        sheet.Add(bench.Player.Id, lift, set, top, 1, null);
    }

    /// <summary>A load meant for 3 to 6 repetitions, often stopped one or two short of failure.</summary>
    private static void SetOfRepetitions(TestBench bench, Sheet sheet, string lift, double maximum, RandomNumbers random)
    {
        var aim = 3 + random.Below(lift == "hang_clean" ? 2 : 4);
        var reserve = random.Uniform() switch { < 0.5 => 0, < 0.8 => 1, _ => 2 };
        // The coach knows the maximum to about 3 %.
        var guess = maximum * (1 + 0.03 * random.Normal());
        var load = Math.Round(guess * Share(aim + reserve, 0.032) / Step) * Step;
        while (Possible(maximum, load, bench.Player.RepetitionCost) - reserve < 1) load -= 2 * Step;
        var done = Possible(maximum, load, bench.Player.RepetitionCost) - reserve;
        // What is left is judged by feel; to failure is plain to see.
        var judged = reserve == 0 ? 0 : Math.Max(0, reserve + (int)Math.Round(0.6 * random.Normal()));
        sheet.Add(bench.Player.Id, lift, 1, load, done, judged);
    }

    /// <summary>As many as possible at 225 lb, the usual football test.</summary>
    private static void RepetitionsAt225(TestBench bench, Sheet sheet)
    {
        if (!bench.Does("bench_press")) return;
        sheet.Add(bench.Player.Id, "bench_press", 1, 225, Possible(bench.Form.BenchPounds, 225, bench.Player.RepetitionCost), 0);
    }

    /// <summary>Share of the maximum that can be lifted so many times.</summary>
    public static double Share(double repetitions, double cost) => 1 / (1 + cost * (repetitions - 1));

    /// <summary>Whole repetitions possible at a load; 0 when the load is above the maximum.</summary>
    public static int Possible(double maximum, double load, double cost)
        => load > maximum ? 0 : (int)Math.Floor(1 + (maximum / load - 1) / cost);
}
