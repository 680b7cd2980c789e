using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Sprinting;

/// <summary>One pool of timing error for each series and start model of a squad.</summary>
public sealed class SplitErrorPools
{
    private readonly Dictionary<(string Series, StartModel Start), SplitErrorPool> pools = [];

    private SplitErrorPools()
    {
    }

    /// <summary>The pools, by series and start model.</summary>
    public IReadOnlyDictionary<(string Series, StartModel Start), SplitErrorPool> BySeries => pools;

    /// <summary>Pools the runs of a squad.</summary>
    /// <param name="trials">Runs timed by the same gates and staff.</param>
    public static SplitErrorPools Of(IEnumerable<SprintTrial> trials)
    {
        ArgumentNullException.ThrowIfNull(trials);
        return Of(trials.Select(SprintReading.Of));
    }

    /// <summary>Pools readings.</summary>
    /// <param name="readings">Readings of runs timed by the same gates and staff.</param>
    public static SplitErrorPools Of(IEnumerable<SprintReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var result = new SplitErrorPools();
        foreach (var group in readings.GroupBy(r => (r.Series, r.Fit.Start)))
            if (SplitErrorPool.Of(group.Select(r => r.Fit)) is { } pool)
                result.pools.Add(group.Key, pool);
        return result;
    }

    /// <summary>The reading with its errors from its pool; unchanged when there is none.</summary>
    /// <param name="reading">A reading.</param>
    public SprintReading Apply(SprintReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return pools.TryGetValue((reading.Series, reading.Fit.Start), out var pool) ? reading with { Fit = reading.Fit.With(pool) } : reading;
    }
}
