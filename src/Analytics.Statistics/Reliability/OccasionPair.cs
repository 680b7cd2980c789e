namespace Analytics.Statistics.Reliability;

/// <summary>A test on two occasions, one value an athlete on each.</summary>
public sealed class OccasionPair
{
    /// <summary>Makes the pair.</summary>
    /// <param name="first">Values of the first occasion, all finite.</param>
    /// <param name="second">Values of the second, of the same athletes in the same order.</param>
    /// <exception cref="ArgumentException">Unlike lengths or a value that is not finite.</exception>
    public OccasionPair(IReadOnlyList<double> first, IReadOnlyList<double> second)
    {
        Require.Sample(first, 2, nameof(first));
        Require.Sample(second, 2, nameof(second));
        if (first.Count != second.Count) throw new ArgumentException($"{first.Count} values on the first occasion and {second.Count} on the second; they must be of the same athletes.", nameof(second));
        First = [.. first];
        Second = [.. second];
    }

    /// <summary>The first occasion.</summary>
    public IReadOnlyList<double> First { get; }

    /// <summary>The second occasion.</summary>
    public IReadOnlyList<double> Second { get; }

    /// <summary>Athletes.</summary>
    public int Count => First.Count;
}
