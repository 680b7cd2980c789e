using System.Globalization;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;

namespace Analytics.Simulation.BenchStudy.Document;

/// <summary>So many of so many squads, with the exact binomial interval (Clopper and Pearson 1934).</summary>
/// <param name="Held">Squads in which it held.</param>
/// <param name="Asked">Squads asked.</param>
public readonly record struct Rate(int Held, int Asked)
{
    public double Share => (double)Held / Asked;

    public Interval Interval => new(
        Held == 0 ? 0 : BetaLaw.Quantile(0.025, Held, Asked - Held + 1),
        Held == Asked ? 1 : BetaLaw.Quantile(0.975, Held + 1, Asked - Held));

    public static Rate Of<T>(IEnumerable<T> all, Func<T, bool> held)
    {
        var (yes, asked) = (0, 0);
        foreach (var one in all) (yes, asked) = (yes + (held(one) ? 1 : 0), asked + 1);
        return new(yes, asked);
    }

    /// <summary>Per cent with the interval; a dash where nothing was asked.</summary>
    public override string ToString() => Asked == 0 ? "–" : string.Create(CultureInfo.InvariantCulture, $"{100 * Share:0.0} ({100 * Interval.Low:0.0} to {100 * Interval.High:0.0})");
}
