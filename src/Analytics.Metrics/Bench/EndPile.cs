using Analytics.Metrics.Catalogue;

namespace Analytics.Metrics.Bench;

/// <summary>Whether values pile up at an end, where the metric can tell athletes no longer apart.</summary>
/// <param name="N">Athletes.</param>
/// <param name="AtLowest">Athletes whose value reads the same as the lowest, in the decimals shown.</param>
/// <param name="AtHighest">Athletes whose value reads the same as the highest.</param>
/// <param name="OutsideBelieved">Athletes outside the values to be believed.</param>
public sealed record EndPile(int N, int AtLowest, int AtHighest, int OutsideBelieved)
{
    /// <summary>Share of athletes at an end from which one speaks of a floor or a ceiling: 15 % [terwee2007].</summary>
    public const double Much = 0.15;

    /// <summary>Fewest athletes at an end: two may read the same by chance (our choice).</summary>
    private const int FewestAtEnd = 3;

    /// <summary>Whether there is a floor: many athletes share the lowest value.</summary>
    public bool HasFloor => Piles(AtLowest);

    /// <summary>Whether there is a ceiling: many athletes share the highest value.</summary>
    public bool HasCeiling => Piles(AtHighest);

    internal static EndPile Of(Metric metric, OccasionValues values)
    {
        double[] all = [.. values.Athletes.Select(a => values.Of(a)!.Value)];
        if (all.Length == 0) return new(0, 0, 0, 0);
        double Shown(double v) => Math.Round(v, Math.Min(metric.Decimals, 15));
        double low = Shown(all.Min()), high = Shown(all.Max());
        return new(all.Length, all.Count(v => Shown(v) == low), all.Count(v => Shown(v) == high), all.Count(v => v < metric.PlausibleLow || v > metric.PlausibleHigh));
    }

    private bool Piles(int atEnd) => atEnd >= FewestAtEnd && atEnd > Much * N;
}
