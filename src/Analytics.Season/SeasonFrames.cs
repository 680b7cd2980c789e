using Analytics.Metrics.Load;
using Analytics.Metrics.Trials;
using Microsoft.Data.Analysis;

namespace Analytics.Season;

/// <summary>A season as data frames, for looking at it freely in a notebook. All numbers are in SI units, named in the column.</summary>
public static class SeasonFrames
{
    /// <summary>The athletes: <c>athlete_id, name, position, group, stature_m, birth_year, training_years</c>.</summary>
    /// <param name="season">The season.</param>
    public static DataFrame Athletes(SeasonData season) => new(
        Text("athlete_id", season.Athletes.Select(a => a.Id)),
        Text("name", season.Athletes.Select(a => a.Name)),
        Text("position", season.Athletes.Select(a => a.Position)),
        Text("group", season.Athletes.Select(a => a.Group)),
        new DoubleDataFrameColumn("stature_m", season.Athletes.Select(a => a.Stature?.Metres)),
        new Int32DataFrameColumn("birth_year", season.Athletes.Select(a => a.BirthYear)),
        new DoubleDataFrameColumn("training_years", season.Athletes.Select(a => a.TrainingYears)));

    /// <summary>
    /// The training sessions: <c>date, athlete_id, focus, minutes, session_rpe, session_load_au, jump_contacts, volume_load_kg</c>. What was not written down is missing,
    /// not 0.
    /// </summary>
    /// <param name="season">The season.</param>
    public static DataFrame Sessions(SeasonData season) => new(
        new DateTimeDataFrameColumn("date", season.Sessions.Select(s => s.Date.ToDateTime(TimeOnly.MinValue))),
        Text("athlete_id", season.Sessions.Select(s => s.AthleteId)),
        Text("focus", season.Sessions.Select(s => s.Focus)),
        new DoubleDataFrameColumn("minutes", season.Sessions.Select(s => s.Minutes)),
        new DoubleDataFrameColumn("session_rpe", season.Sessions.Select(s => s.SessionRpe)),
        new DoubleDataFrameColumn("session_load_au", season.Sessions.Select(s => s.Work.LoadAu)),
        new Int32DataFrameColumn("jump_contacts", season.Sessions.Select(s => s.JumpContacts)),
        new DoubleDataFrameColumn("volume_load_kg", season.Sessions.Select(s => s.Exercises.Count > 0 ? VolumeLoad.Of(s.Exercises).Total.Kilograms : (double?)null)));

    /// <summary>
    /// The trials, one row for each value measured: <c>date, athlete_id, kind, test, attempt, measure, value, unit</c>.
    /// A sprint gives one row for each gate, a set one for load and one for repetitions.
    /// </summary>
    /// <param name="season">The season.</param>
    public static DataFrame Trials(SeasonData season)
    {
        var rows = season.Days.SelectMany(d => d.Athletes).SelectMany(a => a.Trials).SelectMany(TrialValues.Of).ToList();
        return new DataFrame(
            new DateTimeDataFrameColumn("date", rows.Select(r => r.Trial.Date.ToDateTime(TimeOnly.MinValue))),
            Text("athlete_id", rows.Select(r => r.Trial.AthleteId)),
            Text("kind", rows.Select(r => r.Kind)),
            Text("test", rows.Select(r => r.Test)),
            new Int32DataFrameColumn("attempt", rows.Select(r => r.Trial.Attempt)),
            Text("measure", rows.Select(r => r.Measure)),
            new DoubleDataFrameColumn("value", rows.Select(r => r.Value)),
            Text("unit", rows.Select(r => r.Unit)));
    }

    private static StringDataFrameColumn Text(string name, IEnumerable<string> values) => new(name, values);
}
