namespace Analytics.Statistics.Association;

/// <summary>Ranks from 1; equal values share the mean of theirs.</summary>
internal static class Ranks
{
    public static double[] Of(IReadOnlyList<double> values)
    {
        var order = Enumerable.Range(0, values.Count).OrderBy(i => values[i]).ToArray();
        var ranks = new double[values.Count];
        for (int from = 0, to; from < order.Length; from = to)
        {
            to = from + 1;
            while (to < order.Length && values[order[to]].Equals(values[order[from]])) to++;
            for (var k = from; k < to; k++) ranks[order[k]] = (from + to + 1) / 2.0;
        }

        return ranks;
    }
}
