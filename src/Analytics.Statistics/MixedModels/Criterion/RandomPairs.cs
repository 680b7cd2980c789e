namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>
/// The entries (i, j), j ≤ i, of a symmetric q × q matrix D, numbered row by row: (0,0), (1,0), (1,1), … The derivative of D by entry a is E_a,
/// with ones at (i, j) and (j, i).
/// </summary>
internal static class RandomPairs
{
    public static int Count(int q) => q * (q + 1) / 2;

    public static int Index(int i, int j) => i >= j ? (i * (i + 1) / 2) + j : Index(j, i);

    public static (int I, int J)[] All(int q)
    {
        var pairs = new (int, int)[Count(q)];
        for (var i = 0; i < q; i++)
            for (var j = 0; j <= i; j++) pairs[Index(i, j)] = (i, j);
        return pairs;
    }

    /// <summary>tr(M E_a) for a symmetric M.</summary>
    public static double Trace(ReadOnlySpan<double> m, int q, (int I, int J) a)
        => a.I == a.J ? m[(a.I * q) + a.I] : 2 * m[(a.I * q) + a.J];

    /// <summary>tr(A E_a B E_b) for symmetric A and B.</summary>
    public static double Trace(ReadOnlySpan<double> first, ReadOnlySpan<double> second, int q, (int I, int J) a, (int I, int J) b)
    {
        var sum = Term(first, second, q, a.I, a.J, b.I, b.J);
        if (a.I != a.J) sum += Term(first, second, q, a.J, a.I, b.I, b.J);
        if (b.I == b.J) return sum;
        sum += Term(first, second, q, a.I, a.J, b.J, b.I);
        return a.I != a.J ? sum + Term(first, second, q, a.J, a.I, b.J, b.I) : sum;
    }

    private static double Term(ReadOnlySpan<double> first, ReadOnlySpan<double> second, int q, int i, int j, int k, int l)
        => first[(l * q) + i] * second[(j * q) + k];
}
