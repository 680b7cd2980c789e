namespace Analytics.Metrics.Motion;

/// <summary>A segment of the table laid between landmarks of a clip.</summary>
/// <param name="Name">Name, with its side.</param>
/// <param name="Row">Its row in the table.</param>
/// <param name="First">Landmark of the first end point; of two (near and far shoulder) the middle is taken, and one alone stands in for both.</param>
/// <param name="Second">Landmark of the other end point, likewise.</param>
public sealed record SegmentMass(string Name, SegmentRow Row, IReadOnlyList<MarkerRole> First, IReadOnlyList<MarkerRole> Second)
{
    internal bool CanBeHad(IReadOnlySet<MarkerRole> available) => First.Any(available.Contains) && Second.Any(available.Contains);

    /// <summary>Adds this segment's share of the body's first moment to the weight of each landmark.</summary>
    internal void AddWeights(IReadOnlySet<MarkerRole> available, Dictionary<MarkerRole, double> weights)
    {
        Add(First, Row.MassFraction * (1 - Row.CentreFromFirst));
        Add(Second, Row.MassFraction * Row.CentreFromFirst);

        void Add(IReadOnlyList<MarkerRole> ends, double moment)
        {
            MarkerRole[] there = [.. ends.Where(available.Contains)];
            foreach (var role in there) weights[role] = weights.GetValueOrDefault(role) + (moment / there.Length);
        }
    }

    /// <summary>A note when one landmark stands in for the middle of two; null otherwise.</summary>
    internal string? StandIn(IReadOnlySet<MarkerRole> available)
    {
        var lonely = new[] { First, Second }.Where(e => e.Count > 1 && e.Count(available.Contains) == 1).Select(e => e.Single(available.Contains).InWords());
        var words = string.Join(" and ", lonely);
        return words.Length == 0 ? null : $"{Name}: the {words} alone stands in for the middle of both sides";
    }
}
