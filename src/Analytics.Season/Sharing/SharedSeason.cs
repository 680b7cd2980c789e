using Analytics.Season.Cells;

namespace Analytics.Season.Sharing;

/// <summary>A season in which nothing names a player.</summary>
internal static class SharedSeason
{
    /// <summary>Takes names out, everywhere.</summary>
    /// <param name="season">The season, messages still with their <see cref="CellMarks"/>.</param>
    /// <param name="names">Who is called what.</param>
    /// <param name="hidesLines">Whether lines of files are left out, since sheets go by the squad list.</param>
    public static SeasonData Of(SeasonData season, SharedNames names, bool hidesLines)
    {
        var paths = new SharedPaths(season.Earlier.ToDictionary(e => e.Name, e => names.Title(e.Name), StringComparer.Ordinal));
        var trials = new SharedTrials(names, paths, hidesLines);
        var messages = new SharedMessages(names, paths, hidesLines);
        // Clips get their numbers from the trials, in the order of what athletes are called.
        var days = season.Days.Select(trials.Day).ToList();
        return season with
        {
            Settings = SharedSettings.Of(season.Settings, names),
            Athletes = [.. season.Athletes.Select(a => Athlete(a, names)).OrderBy(a => names.Place(a.Id))],
            Days = days,
            Sessions = [.. season.Sessions.Select(s => trials.Session(s)).OrderBy(s => s.Date).ThenBy(s => names.Place(s.AthleteId))],
            Training = new SharedTraining(names, trials, paths, hidesLines).Of(season.Training),
            // In file order they would stand as in the squad list.
            HeldBack = [.. season.HeldBack.Select(messages.HeldBack).OrderBy(h => h.File, StringComparer.Ordinal).ThenBy(h => h.Line).ThenBy(h => h.Reason, StringComparer.Ordinal).ThenBy(h => h.AthleteId, StringComparer.Ordinal).ThenBy(h => h.Value, StringComparer.Ordinal)],
            Notes = [.. season.Notes.Select(messages.Note).OrderBy(n => n.File, StringComparer.Ordinal).ThenBy(n => n.Text, StringComparer.Ordinal)],
            Files = [.. season.Files.Select(f => f with { Path = paths.Path(f.Path) }).OrderBy(f => f.Path, StringComparer.Ordinal)],
            Earlier = [.. season.Earlier.Select(e => e with { Name = names.Title(e.Name) })],
        };
    }

    private static Athlete Athlete(Athlete athlete, SharedNames names)
    {
        var shown = names.Of(athlete.Id);
        // Years of birth and training are not printed, but figures of the whole squad rest on them and must not differ from those with names.
        return athlete with { Id = shown, Name = shown, Position = names.Group(athlete.Position), Group = names.Group(athlete.Group), Stature = null };
    }
}
