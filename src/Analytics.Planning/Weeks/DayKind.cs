using System.Globalization;
using Analytics.Planning.Exercises;

namespace Analytics.Planning.Weeks;

/// <summary>Which half of the body an exercise loads.</summary>
public enum BodyHalf
{
    /// <summary>Either.</summary>
    Any,

    /// <summary>The legs carry the load.</summary>
    Lower,

    /// <summary>They do not.</summary>
    Upper,
}

/// <summary>Halves of the body in words.</summary>
public static class BodyHalves
{
    /// <summary>" for the legs", " for the upper body"; empty for either.</summary>
    /// <param name="half">The half.</param>
    public static string Words(this BodyHalf half) => half switch { BodyHalf.Lower => " for the legs", BodyHalf.Upper => " for the upper body", _ => "" };
}

/// <summary>What a training day of a kind asks of one quality, or of one half of the body in it.</summary>
/// <param name="Quality">The quality.</param>
/// <param name="Least">Fewest exercises of it in the shared part.</param>
/// <param name="Most">Most exercises of it in the shared part.</param>
/// <param name="IsOwnWork">Whether the own work of a player may be of it.</param>
public sealed record DayDemand(TrainedQuality Quality, int Least, int Most, bool IsOwnWork = false)
{
    /// <summary>Half of the body it speaks of.</summary>
    public BodyHalf Half { get; init; }

    /// <summary>Lightest top set the day takes, per cent of the exercise's own 1RM; null for no limit of the day.</summary>
    public double? LeastPercent { get; init; }

    /// <summary>Heaviest working set the day takes, per cent of the exercise's own 1RM; null for no limit of the day.</summary>
    public double? MostPercent { get; init; }

    /// <summary>What it is of, in words: "maximal strength for the legs".</summary>
    public string What => Quality.Name() + Half.Words();

    /// <summary>How many, in words: "1 exercise", "1 to 2 exercises".</summary>
    public string Count => Least == Most ? string.Create(CultureInfo.InvariantCulture, $"{Most} {(Most == 1 ? "exercise" : "exercises")}")
        : string.Create(CultureInfo.InvariantCulture, $"{Least} to {Most} exercises");

    /// <summary>The per cent it takes, in words: "from 75 % of 1RM"; empty for no limit.</summary>
    public string Intensity => (LeastPercent, MostPercent) switch
    {
        (null, null) => "",
        ({ } least, null) => string.Create(CultureInfo.InvariantCulture, $"from {least:0} % of 1RM"),
        (null, { } most) => string.Create(CultureInfo.InvariantCulture, $"up to {most:0} % of 1RM"),
        ({ } least, { } most) => string.Create(CultureInfo.InvariantCulture, $"{least:0} to {most:0} % of 1RM"),
    };

    /// <summary>Whether it speaks of an exercise.</summary>
    /// <param name="exercise">The exercise.</param>
    public bool Concerns(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise.Quality == Quality && (Half == BodyHalf.Any || Half == BodyHalf.Lower == exercise.Pattern.IsLowerBody());
    }

    /// <summary>Whether the day takes a heaviest working set; a scheme without per cent fits any day.</summary>
    /// <param name="percent">Per cent of the exercise's own 1RM; null where none is meant.</param>
    public bool Takes(double? percent) => !(percent > MostPercent) && !(percent < LeastPercent);
}

/// <summary>A kind of training day.</summary>
/// <param name="Id">Identifier: <c>max_strength</c>, <c>power</c>, <c>speed</c>, <c>reactive</c>, <c>upper_power</c>, <c>recovery</c>, or one of the coach's own.</param>
/// <param name="Name">Name. Untrusted text: always escape.</param>
/// <param name="Demands">What it asks of each quality; of an exercise that none concerns nothing is done. No two concern the same exercise.</param>
/// <param name="Source">Source key, or "common practice, no source".</param>
public sealed record DayKind(string Id, string Name, IReadOnlyList<DayDemand> Demands, string Source)
{
    /// <summary>The kind word of a game in a calendar.</summary>
    public const string Game = "game";

    /// <summary>In a sentence: "a speed day", "an upper-body power day"; a name that says day already gets no second one.</summary>
    public string Described => $"{(Name.Length > 0 && "aeiou".Contains(char.ToLowerInvariant(Name[0]), StringComparison.Ordinal) ? "an" : "a")} {Name}{(Name.EndsWith("day", StringComparison.OrdinalIgnoreCase) ? "" : " day")}";

    /// <summary>What it asks of exercises like this; null when nothing of the kind is done.</summary>
    /// <param name="exercise">The exercise.</param>
    public DayDemand? Of(Exercise exercise) => Demands.FirstOrDefault(d => d.Concerns(exercise));

    /// <summary>Qualities the own work may be of.</summary>
    public IEnumerable<TrainedQuality> OwnWork => Demands.Where(d => d.IsOwnWork).Select(d => d.Quality).Distinct();
}
