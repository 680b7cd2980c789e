using System.Buffers;

namespace Analytics.Season.Checks;

/// <summary>Middle values.</summary>
internal static class Middle
{
    /// <summary>The median; NaN of nothing.</summary>
    public static double Of(IEnumerable<double> values) => OfScratch([.. values]);

    /// <summary>The median of values computed from items.</summary>
    public static double Of<T>(ReadOnlySpan<T> items, Func<T, double> value)
    {
        var rented = ArrayPool<double>.Shared.Rent(Math.Max(1, items.Length));
        for (var i = 0; i < items.Length; i++) rented[i] = value(items[i]);
        var middle = OfScratch(rented.AsSpan(0, items.Length));
        ArrayPool<double>.Shared.Return(rented);
        return middle;
    }

    private static double OfScratch(Span<double> scratch)
    {
        if (scratch.IsEmpty) return double.NaN;
        scratch.Sort();
        var half = scratch.Length / 2;
        return scratch.Length % 2 is 1 ? scratch[half] : (scratch[half - 1] + scratch[half]) / 2;
    }
}
