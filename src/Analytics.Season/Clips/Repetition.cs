using Analytics.Season.Intake;

namespace Analytics.Season.Clips;

/// <summary>The rows of one repetition, in file order.</summary>
/// <param name="AthleteId">Whose it is.</param>
/// <param name="Clip">Name of the clip.</param>
/// <param name="Attempt">Number of the attempt.</param>
internal sealed record Repetition(string AthleteId, string Clip, int Attempt)
{
    /// <summary>The rows, each with a <see cref="ContactRow"/>.</summary>
    public List<Candidate> Rows { get; } = [];

    /// <summary>Puts rows of one table together that name the same athlete, attempt and clip; rows without an attempt go by the clip.</summary>
    public static IReadOnlyList<Repetition> Of(IEnumerable<Candidate> candidates)
    {
        var repetitions = new Dictionary<(ReadTable, string, string, int), Repetition>();
        var attempts = new Dictionary<(ReadTable, string), List<(string Clip, int Attempt)>>();
        foreach (var candidate in candidates)
        {
            if (candidate.Trial is not ContactRow row) continue;
            var clip = row.Clip.ToUpperInvariant();
            if (!attempts.TryGetValue((candidate.Table, row.AthleteId), out var seen)) attempts.Add((candidate.Table, row.AthleteId), seen = []);
            var known = seen.FindLast(s => s.Clip == clip);
            var attempt = row.Attempt > 0 ? row.Attempt : known.Attempt > 0 ? known.Attempt : seen.Count + 1;
            if (!seen.Contains((clip, attempt))) seen.Add((clip, attempt));
            var key = (candidate.Table, row.AthleteId, clip, attempt);
            if (!repetitions.TryGetValue(key, out var repetition)) repetitions.Add(key, repetition = new Repetition(row.AthleteId, row.Clip, attempt));
            repetition.Rows.Add(candidate);
        }

        return [.. repetitions.Values];
    }
}
