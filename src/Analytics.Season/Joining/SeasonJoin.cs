using Analytics.Metrics.Trials;
using Analytics.Season.Training;

namespace Analytics.Season.Joining;

/// <summary>
/// Joins seasons on athlete_id into one. Each is read and checked by itself before; nothing of one changes a value of another, so a body mass holds within its season only.
/// </summary>
internal static class SeasonJoin
{
    /// <summary>The joined season: settings of the latest; days, sessions, retests and what was held back of all.</summary>
    /// <param name="seasons">Oldest first.</param>
    /// <exception cref="SeasonException">The order is wrong, or a testing day or a session stands in two of them.</exception>
    public static SeasonData Of(IReadOnlyList<SeasonData> seasons)
    {
        if (seasons.Count is 1) return seasons[0];
        var parts = SeasonPart.Of(seasons);
        var squad = new JoinedSquad(parts);
        JoinChecks.Refuse(parts, squad);
        var latest = seasons[^1];
        return latest with
        {
            Settings = latest.Settings with
            {
                From = seasons[0].Settings.From,
                To = seasons.Max(s => s.Settings.To),
                Retests = [.. seasons.SelectMany(s => s.Settings.Retests).Distinct().OrderBy(r => r.First).ThenBy(r => r.Second)],
            },
            Athletes = squad.Athletes,
            Days = [.. parts.SelectMany(p => p.Data.Days.Select(d => Day(d, p, squad))).GroupBy(d => d.Date).OrderBy(d => d.Key).Select(d => d.MaxBy(s => s.Athletes.Count)!)],
            Sessions = [.. seasons.SelectMany(s => s.Sessions.Select(r => r with { AthleteId = squad.IdOf(r.AthleteId) }))],
            HeldBack = [.. parts.SelectMany(p => p.Data.HeldBack.Select(h => h with { File = p.Path(h.File), AthleteId = h.AthleteId is { } id ? squad.IdOf(id) : null }))],
            Notes = [.. parts.SelectMany(p => p.Data.Notes.Select(n => n with { File = p.Path(n.File) })), .. squad.Notes, .. TrainingLeft(parts)],
            Files = [.. parts.SelectMany(p => p.Data.Files.Select(f => f with { Path = p.Path(f.Path) }))],
            Earlier = [.. parts.Where(p => !p.IsLatest).Select(p => new SeasonSpan(p.Name, p.Data.Settings.From, p.Data.Settings.To))],
        };
    }

    // Weeks are planned ahead: what an earlier season says of rooms, restrictions and days is over.
    private static IEnumerable<InputNote> TrainingLeft(IReadOnlyList<SeasonPart> parts)
        => parts.Where(p => !p.IsLatest && p.Data.Training.OwnFiles.Count > 0)
            .Select(p => new InputNote(p.Path(TrainingFolder.Name), "Weeks are planned with the folder 'training' of the latest season; this one was read and checked, and is not used. Restrictions that still hold must stand in the latest."));

    private static TestingDay Day(TestingDay day, SeasonPart part, JoinedSquad squad)
        => day with { Athletes = [.. day.Athletes.Select(a => Athlete(a, squad, part)).OrderBy(a => a.AthleteId, StringComparer.Ordinal)] };

    // Identifiers of the latest season are those of the join already.
    private static AthleteDay Athlete(AthleteDay day, JoinedSquad squad, SeasonPart part)
        => part.IsLatest ? day : day with { AthleteId = squad.IdOf(day.AthleteId), Trials = [.. day.Trials.Select(t => part.Trial(t, squad.IdOf))] };
}
