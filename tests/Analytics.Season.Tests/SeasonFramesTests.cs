using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

public sealed class SeasonFramesTests
{
    [Fact]
    public void Athletes_OneRowEach_KeepMissingValuesMissing()
    {
        using var season = new TemporarySeason().With("athletes.csv", "athlete_id,name,position,group,stature_in,training_years\nP002,Ben Vale,LB,Linebackers,,\nP001,Ada Stone,LB,Linebackers,72,3.5\n");

        var frame = SeasonFrames.Athletes(season.Read());

        Assert.Equal(["athlete_id", "name", "position", "group", "stature_m", "birth_year", "training_years"], frame.Columns.Select(c => c.Name));
        Assert.Equal(["P001", "Ada Stone", "LB", "Linebackers", 1.8288, null, 3.5], frame.Rows[0]);
        Assert.Equal(["P002", "Ben Vale", "LB", "Linebackers", null, null, null], frame.Rows[1]);
    }

    [Fact]
    public void Sessions_OneRowEach_KeepMissingValuesMissing()
    {
        using var season = new TemporarySeason().With("sessions.csv", "date,athlete_id,focus,minutes,session_rpe,jump_contacts,lift,sets,repetitions,load_kg\n2026-03-02,P001,power,60,7,40,back_squat,5,5,140\n2026-03-03,P001,,45,,,,,,\n");

        var frame = SeasonFrames.Sessions(season.Read());

        Assert.Equal(["date", "athlete_id", "focus", "minutes", "session_rpe", "session_load_au", "jump_contacts", "volume_load_kg"], frame.Columns.Select(c => c.Name));
        Assert.Equal([new DateTime(2026, 3, 2), "P001", "power", 60.0, 7.0, 420.0, 40, 3500.0], frame.Rows[0]);
        Assert.Equal([new DateTime(2026, 3, 3), "P001", "", 45.0, null, null, null, null], frame.Rows[1]);
    }

    [Fact]
    public void Trials_EveryValue_HasItsRowAndUnit()
    {
        using var season = new TemporarySeason()
            .With("testing/2026-03-02/body.csv", "athlete_id,mass_kg\nP001,100\n")
            .With("testing/2026-03-02/sprints.csv", "athlete_id,attempt,t_10m_s,t_20m_s\nP001,2,1.75,2.98\n")
            .With("testing/2026-03-02/jumps.csv", "athlete_id,jump,method,flight_ms,contact_ms,obstacle_cm\nP001,drop,force_plate,520,190,30\n");

        var frame = SeasonFrames.Trials(season.Read());

        Assert.Equal(["date", "athlete_id", "kind", "test", "attempt", "measure", "value", "unit"], frame.Columns.Select(c => c.Name));
        var rows = frame.Rows.Select(r => string.Join('|', r.Skip(2))).ToList();
        Assert.Equal(
        [
            "body||1|body_mass|100|kg",
            "jumps|drop, force plate|1|flight_time|0.52|s",
            "jumps|drop, force plate|1|contact_time|0.19|s",
            "jumps|drop, force plate|1|obstacle_height|0.3|m",
            "sprints|electronic, three point hand|2|time_at_10_m|1.75|s",
            "sprints|electronic, three point hand|2|time_at_20_m|2.98|s",
        ], rows);
        Assert.Equal(new DateTime(2026, 3, 2), frame.Rows[0][0]);
    }

    [Fact]
    public void Trials_NoTrials_IsEmptyWithColumns()
    {
        using var season = new TemporarySeason();

        var frame = SeasonFrames.Trials(season.Read());

        Assert.Equal((0, 8), (frame.Rows.Count, frame.Columns.Count));
    }
}
