using System.Runtime.InteropServices;

namespace Analytics.Season.Checks;

/// <summary>One athlete's readings of one measure, day by day.</summary>
internal sealed class AthleteHistory(string athleteId)
{
    /// <summary>From this many days on, leaving one out no longer moves the middle value enough to matter.</summary>
    private const int ManyDays = 7;

    private readonly List<Reading> readings = [];
    private readonly List<AthleteDayLevel> days = [];

    public string AthleteId { get; } = athleteId;

    /// <summary>The days, in order.</summary>
    public IReadOnlyList<AthleteDayLevel> Days => days;

    /// <summary>The middle value of the days; NaN without any.</summary>
    public double Level { get; private set; }

    /// <summary>Adds a reading; days must come in order.</summary>
    public void Add(int day, in Reading reading)
    {
        if (days.Count is 0 || days[^1].Day != day) days.Add(new AthleteDayLevel(day, readings.Count, 0, double.NaN));
        days[^1] = days[^1] with { Count = days[^1].Count + 1 };
        readings.Add(reading);
    }

    /// <summary>The readings of a day.</summary>
    public ReadOnlySpan<Reading> Of(AthleteDayLevel day) => CollectionsMarshal.AsSpan(readings).Slice(day.Start, day.Count);

    /// <summary>Works out the value that stands for each day, once all readings are in.</summary>
    public void Seal(bool best)
    {
        for (var i = 0; i < days.Count; i++)
        {
            var level = double.NegativeInfinity;
            if (best) foreach (ref readonly var reading in Of(days[i])) level = Math.Max(level, reading.Value);
            else level = Middle.Of(Of(days[i]), r => r.Value);
            days[i] = days[i] with { Level = level };
        }

        Level = Middle.Of(days.Select(d => d.Level));
    }

    /// <summary>How many other days there are, and the middle value of them; NaN when there is none.</summary>
    public (int Count, double Level) OtherDays(int day)
    {
        // With many days the day itself is surely among them: only days with readings are asked for.
        if (days.Count >= ManyDays) return (days.Count - 1, Level);
        return (days.Count(d => d.Day != day), Middle.Of(days.Where(d => d.Day != day).Select(d => d.Level)));
    }

    /// <summary>Takes a day out.</summary>
    public void Remove(int day)
    {
        days.RemoveAll(d => d.Day == day);
        Level = Middle.Of(days.Select(d => d.Level));
    }
}

/// <summary>A day of an athlete.</summary>
/// <param name="Day">Number of the day.</param>
/// <param name="Start">Place of its first reading.</param>
/// <param name="Count">Number of readings.</param>
/// <param name="Level">The value that stands for the day.</param>
internal readonly record struct AthleteDayLevel(int Day, int Start, int Count, double Level);
