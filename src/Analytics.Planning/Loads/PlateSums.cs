using Analytics.Planning.Rooms;
using Analytics.Quantities;

namespace Analytics.Planning.Loads;

/// <summary>All sums of a bar and pairs of plates, each with the plates that make it.</summary>
internal static class PlateSums
{
    private static readonly long s_most = ExactMass.Of(Mass.FromKilograms(1000));

    /// <summary>Sums in exact units. Plate by plate, heaviest first; of two ways to a sum the better one is kept, and every best way is a best way to a smaller sum and one plate more.</summary>
    public static IReadOnlyDictionary<long, IReadOnlyList<PlateCount>> Of(Mass bar, IReadOnlyList<PlatePair> plates)
    {
        List<PlatePair> sorted = [.. plates.Where(p => ExactMass.Of(p.Weight) > 0).OrderByDescending(p => p.Weight)];
        Dictionary<long, int[]> best = new() { [ExactMass.Of(bar)] = new int[sorted.Count] };
        for (var i = 0; i < sorted.Count; i++)
        {
            var pair = 2 * ExactMass.Of(sorted[i].Weight);
            foreach (var (sum, counts) in best.ToList())
                for (var pairs = 1; pairs <= sorted[i].PairsPerStation && sum + pairs * pair <= s_most; pairs++)
                {
                    int[] candidate = [.. counts];
                    candidate[i] = pairs;
                    if (!best.TryGetValue(sum + pairs * pair, out var other) || IsBetter(candidate, other)) best[sum + pairs * pair] = candidate;
                }
        }

        return best.ToDictionary(b => b.Key, b => (IReadOnlyList<PlateCount>)[.. b.Value.Select((n, i) => new PlateCount(sorted[i].Weight, n)).Where(p => p.Pairs > 0)]);
    }

    // Fewer plates; of as many, the heavier ones.
    private static bool IsBetter(int[] candidate, int[] other)
        => candidate.Sum() != other.Sum() ? candidate.Sum() < other.Sum() : candidate.AsSpan().SequenceCompareTo(other) > 0;
}
