using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Quantities;

namespace Analytics.Planning.Tests.Solving;

/// <summary>The loads of a drawn week: each can be put on with the plates drawn, found by trying every way to put plates on.</summary>
internal static class DrawnLoads
{
    public static void CanBePutOn(int seed, PlanProblem problem, WeekPlan plan)
    {
        var random = new Random(seed);
        var stock = Stock(random);
        var loadable = Sums(stock);
        var loads = 0;
        foreach (var session in plan.Sessions)
            foreach (var player in problem.Players.Where(p => session.Players.Contains(p.Id)))
                foreach (var item in session.For(player.Id).Where(i => i.Exercise.Basis.Kind == LoadBasisKind.Lift))
                {
                    var given = LoadPlan.Of(player, item, stock, problem.Rules, session.Slot.Date);
                    Assert.True(given.Instead is not null == (given.Working.Count == 0), $"seed {seed}: {item.Exercise.Id} for {player.Id}: words or a load, not both");
                    if (given.Working.Count > 0) Assert.Equal(item.Scheme.Sets, given.Working.Count);
                    foreach (var load in given.Working.Concat(given.WarmUp.Select(w => w.Load)))
                    {
                        var set = item.Exercise.Implement == "dumbbell" ? [.. stock.Singles["dumbbell"].Select(d => d.Kilograms)] : loadable;
                        Assert.True(set.Any(k => Math.Abs(k - load.Kilograms) < 1e-9), $"seed {seed}: {load} cannot be put on");
                        loads++;
                    }
                }

        Assert.True(loads > 0 || plan.Sessions.All(s => s.Kind.Id is not "max_strength") || problem.Players.All(p => p.Maxima.Count < 3) || loadable.Count == 0, $"seed {seed}: no load at all");
    }

    private static WeightStock Stock(Random random)
    {
        double[] plates = random.Next(2) == 0 ? [20, 10, 5, 2.5, 1.25] : [45 * 0.45359237, 25 * 0.45359237, 10 * 0.45359237, 5 * 0.45359237, 2.5 * 0.45359237];
        return new()
        {
            Bar = Mass.FromKilograms(20),
            Plates = [.. plates.Where(_ => random.Next(4) > 0).Select(p => new PlatePair(Mass.FromKilograms(p), random.Next(1, 4)))],
            Singles = new Dictionary<string, IReadOnlyList<Mass>> { ["dumbbell"] = [.. Enumerable.Range(1, 12).Select(i => Mass.FromKilograms(5 * i))] },
            Unit = "kg",
        };
    }

    private static HashSet<double> Sums(WeightStock stock)
    {
        HashSet<double> sums = [stock.Bar!.Value.Kilograms];
        foreach (var plate in stock.Plates)
            sums = [.. sums.SelectMany(s => Enumerable.Range(0, plate.PairsPerStation + 1).Select(n => s + 2 * n * plate.Weight.Kilograms))];
        return sums;
    }
}
