namespace Analytics.Notebooks.Charts;

/// <summary>Moves dots of equal value apart, up and down, always the same way.</summary>
internal static class Swarm
{
    /// <summary>Vertical offsets in pixels, in the order of the places given.</summary>
    /// <param name="places">Horizontal places in pixels.</param>
    /// <param name="diameter">Distance that keeps two dots apart, in pixels.</param>
    /// <param name="reach">Largest offset, in pixels; dots beyond it overlap.</param>
    public static double[] Offsets(IReadOnlyList<double> places, double diameter, double reach)
    {
        var offsets = new double[places.Count];
        var set = new List<int>();
        foreach (var i in Enumerable.Range(0, places.Count).OrderBy(i => places[i]))
        {
            offsets[i] = Candidates(diameter, reach).Where(o => set.TrueForAll(j => Clear(places, offsets, i, j, o, diameter))).FirstOrDefault();
            set.Add(i);
        }
        return offsets;
    }

    private static bool Clear(IReadOnlyList<double> places, double[] offsets, int i, int j, double offset, double diameter)
    {
        var (x, y) = (places[i] - places[j], offset - offsets[j]);
        return (x * x) + (y * y) >= diameter * diameter * 0.8;
    }

    // 0, up, down, further up, further down ... in steps fine enough for a close packing.
    private static IEnumerable<double> Candidates(double diameter, double reach)
    {
        yield return 0;
        for (var offset = diameter / 2; offset <= reach; offset += diameter / 4)
        {
            yield return -offset;
            yield return offset;
        }
    }
}
