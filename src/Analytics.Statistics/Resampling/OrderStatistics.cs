namespace Analytics.Statistics.Resampling;

/// <summary>Puts a few order statistics in place without sorting the rest.</summary>
internal static class OrderStatistics
{
    /// <summary>Rearranges the values so that those at the ranks (from 0, ascending) stand where a sort would put them.</summary>
    public static void Place(Span<double> values, ReadOnlySpan<int> ranks) => Place(values, ranks, 0);

    private static void Place(Span<double> values, ReadOnlySpan<int> ranks, int offset)
    {
        while (ranks.Length > 0 && values.Length > 1)
        {
            if (values.Length <= 32)
            {
                values.Sort();
                return;
            }

            var (low, high) = Partition(values);
            // Below low all are smaller than the pivot, from high on all are larger; between they equal it.
            int left = 0, right = ranks.Length;
            while (left < ranks.Length && ranks[left] - offset < low) left++;
            while (right > left && ranks[right - 1] - offset >= high) right--;
            Place(values[..low], ranks[..left], offset);
            values = values[high..];
            ranks = ranks[right..];
            offset += high;
        }
    }

    private static (int Low, int High) Partition(Span<double> v)
    {
        var pivot = Middle(Middle(v[0], v[v.Length / 8], v[v.Length / 4]), v[v.Length / 2], Middle(v[^1], v[^(v.Length / 8)], v[^(v.Length / 4)]));
        int i = 0, j = v.Length - 1;
        while (i <= j)
        {
            while (v[i] < pivot) i++;
            while (v[j] > pivot) j--;
            if (i > j) break;
            (v[i], v[j]) = (v[j], v[i]);
            i++;
            j--;
        }

        return (j + 1, i);
    }

    private static double Middle(double a, double b, double c) => Math.Max(Math.Min(a, b), Math.Min(Math.Max(a, b), c));
}
