using Analytics.Planning.Schemes;

namespace Analytics.Planning.Loads;

/// <summary>Per cent of 1RM set by set.</summary>
public static class SchemeLoads
{
    /// <summary>Per cent of each working set, in order: evenly from the lightest to the heaviest where the scheme builds up, else the heaviest in all. Empty where the scheme means no per cent.</summary>
    /// <param name="scheme">The scheme.</param>
    public static IReadOnlyList<double> Percents(SetScheme scheme)
    {
        ArgumentNullException.ThrowIfNull(scheme);
        if (scheme.MostPercent is not { } most) return [];
        if (scheme.Kind != SchemeKind.Ramp || scheme.Sets == 1) return [.. Enumerable.Repeat(most, scheme.Sets)];
        var least = scheme.LeastPercent ?? most;
        return [.. Enumerable.Range(0, scheme.Sets).Select(i => least + (most - least) * i / (scheme.Sets - 1))];
    }
}
