using Analytics.Statistics;
using Analytics.Statistics.Change;
using Analytics.Statistics.EffectSize;

namespace Analytics.Metrics.Bench;

/// <summary>Two testers, by athletes whom each of them tested on one occasion.</summary>
/// <param name="First">One of them, as noted.</param>
/// <param name="Second">The other.</param>
/// <param name="Shift">Values with the second less values with the first. Where both orders occur, the mean of the two orders' means, so that what the later day does to everybody drops out.</param>
/// <param name="SecondWasLater">Athletes whom the second tested on the later day.</param>
public sealed record TesterContrast(string First, string Second, Estimate Shift, int SecondWasLater)
{
    /// <summary>Fewest athletes of an order for its mean to have a doubt of its own.</summary>
    private const int Fewest = 2;

    /// <summary>Whether tester and order can be told apart: enough athletes were tested in each order.</summary>
    public bool BothOrders => SecondWasLater >= Fewest && Shift.N - SecondWasLater >= Fewest;

    internal static TesterContrast Of(string first, string second, IReadOnlyList<(double Change, bool Later)> pairs)
    {
        double[] later = [.. pairs.Where(p => p.Later).Select(p => p.Change)], earlier = [.. pairs.Where(p => !p.Later).Select(p => p.Change)];
        var bare = new TesterContrast(first, second, MeanChange.Of([.. pairs.Select(p => p.Change)]).Mean, later.Length);
        if (!bare.BothOrders) return bare;
        const string method = "mean of both orders, spreads may differ [welch1947]";
        // Without spread in either order there is no error to go by.
        if (Flat.Is(later) && Flat.Is(earlier)) return bare with { Shift = new((later.Average() + earlier.Average()) / 2, null, null, pairs.Count, method) };
        // Half the difference of the orders as they ran, as in a crossover trial.
        var welch = WelchTest.Between(later, [.. earlier.Select(c => -c)]);
        return bare with { Shift = new(welch.Difference / 2, welch.StandardError / 2, welch.Interval.Times(0.5), pairs.Count, method) };
    }
}
