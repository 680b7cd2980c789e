using Analytics.Planning.Loads;
using Analytics.Planning.Rooms;
using Analytics.Quantities;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace Analytics.Planning.Tests.Loads;

/// <summary>Loads of any stock against every way to put plates on, counted out one by one in decimals.</summary>
public sealed class LoadableWeightsPropertyTests
{
    private static readonly decimal[] Marks = [0.25m, 0.5m, 1.25m, 2.5m, 5m, 10m, 15m, 25m, 45m];

    private static Gen<Drawn> Stocks() =>
        from unit in Gen.Elements("lb", "kg")
        from bar in Gen.Elements(0m, 15m, 20m, 33m, 45m)
        from pairs in Gen.ArrayOf(Gen.Choose(0, 3), 9)
        from wanted in Gen.Choose(0, 4000)
        select new Drawn(unit, bar, pairs, wanted / 10m);

    [Property(MaxTest = 100, Replay = "(20260608,7)")]
    public Property AnyStock_HoldsWhatCountingOutHolds() => Prop.ForAll(Stocks().ToArbitrary(), drawn =>
    {
        // Kinds with 0 pairs are not in the stock; the weights go in lightest first to see that order does not matter.
        List<(decimal Weight, int Pairs)> kinds = [.. Marks.Zip(drawn.Pairs).Where(k => k.Second > 0).Take(6)];
        WeightStock stock = new() { Unit = drawn.Unit, Bar = In(drawn.Unit, drawn.Bar), Plates = [.. kinds.Select(k => new PlatePair(In(drawn.Unit, k.Weight), k.Pairs))] };
        var fewest = CountedOut(drawn.Bar, kinds);

        var loads = LoadableWeights.Of(stock, "barbell");

        Assert.Equal(fewest.Keys.Order(), loads.All.Select(m => Marked(drawn.Unit, m)));
        decimal? heaviest = fewest.Keys.Where(k => k <= drawn.Wanted).Select(k => (decimal?)k).Max();
        Assert.Equal(heaviest, loads.Down(In(drawn.Unit, drawn.Wanted)) is { } down ? Marked(drawn.Unit, down) : null);
        Assert.All(loads.All, load =>
        {
            var plates = loads.PlatesFor(load)!;
            Assert.Equal(Marked(drawn.Unit, load), drawn.Bar + plates.Sum(p => 2 * p.Pairs * Marked(drawn.Unit, p.Weight)));
            Assert.Equal(fewest[Marked(drawn.Unit, load)], plates.Sum(p => p.Pairs));
            Assert.All(plates, p => Assert.True(p.Pairs <= kinds.Single(k => k.Weight == Marked(drawn.Unit, p.Weight)).Pairs));
            Assert.Equal(plates.OrderByDescending(p => p.Weight), plates);
        });
    });

    // Fewest pairs by load.
    private static Dictionary<decimal, int> CountedOut(decimal bar, List<(decimal Weight, int Pairs)> kinds)
    {
        Dictionary<decimal, int> fewest = [];
        void Next(int kind, decimal load, int pairs)
        {
            if (kind == kinds.Count) fewest[load] = Math.Min(pairs, fewest.GetValueOrDefault(load, int.MaxValue));
            else for (var n = 0; n <= kinds[kind].Pairs; n++) Next(kind + 1, load + 2 * n * kinds[kind].Weight, pairs + n);
        }

        Next(0, bar, 0);
        return fewest;
    }

    private static Mass In(string unit, decimal number) => unit == "lb" ? Mass.FromPounds((double)number) : Mass.FromKilograms((double)number);

    // Marks are whole quarters; a decimal from a double has 15 digits.
    private static decimal Marked(string unit, Mass mass) => Math.Round((decimal)(unit == "lb" ? mass.Pounds : mass.Kilograms), 6);

    private sealed record Drawn(string Unit, decimal Bar, int[] Pairs, decimal Wanted);
}
