using Analytics.Planning.Exercises;

namespace Analytics.Planning.Weeks;

/// <summary>What a training day of a kind asks of one quality.</summary>
/// <param name="Quality">The quality.</param>
/// <param name="Least">Fewest exercises of it in the shared part.</param>
/// <param name="Most">Most exercises of it in the shared part.</param>
/// <param name="IsOwnWork">Whether the own work of a player may be of it.</param>
/// <param name="MostPercent">Heaviest working set, per cent of the exercise's own 1RM; null for no limit of the day.</param>
public sealed record DayDemand(TrainedQuality Quality, int Least, int Most, bool IsOwnWork = false, double? MostPercent = null)
{
    /// <summary>Lightest top set of a scheme in per cent that the day takes, per cent of the exercise's own 1RM; null for no limit of the day.</summary>
    public double? LeastPercent { get; init; }

    /// <summary>Of the fewest, how many the legs must carry.</summary>
    public int LeastLower { get; init; }

    /// <summary>Of the fewest, how many the legs must not carry.</summary>
    public int LeastUpper { get; init; }

    /// <summary>Whether its per cent take a working set; one without per cent fits any day.</summary>
    /// <param name="percent">Heaviest working set, per cent of the exercise's own 1RM; null where none is meant.</param>
    public bool Takes(double? percent) => !(percent > MostPercent) && !(percent < LeastPercent);
}

/// <summary>A kind of training day.</summary>
/// <param name="Id">Identifier: <c>max_strength</c>, <c>power</c>, <c>speed</c>, <c>reactive</c>, <c>upper_power</c>, <c>recovery</c>, or one of the coach's own.</param>
/// <param name="Name">Name. Untrusted text: always escape.</param>
/// <param name="Demands">What it asks of each quality; of one that is not listed nothing is done.</param>
/// <param name="Source">Source key, or "common practice, no source".</param>
public sealed record DayKind(string Id, string Name, IReadOnlyList<DayDemand> Demands, string Source)
{
    /// <summary>The kind word of a game in a calendar.</summary>
    public const string Game = "game";

    /// <summary>What it asks of a quality; null when nothing of it is done.</summary>
    /// <param name="quality">The quality.</param>
    public DayDemand? Of(TrainedQuality quality) => Demands.FirstOrDefault(d => d.Quality == quality);

    /// <summary>Qualities the own work may be of.</summary>
    public IEnumerable<TrainedQuality> OwnWork => Demands.Where(d => d.IsOwnWork).Select(d => d.Quality);
}
