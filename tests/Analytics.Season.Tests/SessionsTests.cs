using Analytics.Metrics.Load;
using Analytics.Quantities;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

/// <summary>Rows of sessions.csv become sessions.</summary>
public sealed class SessionsTests
{
    private const string Heads = "date,athlete_id,focus,minutes,session_rpe,jump_contacts,lift,sets,repetitions,load_lb\n";

    [Fact]
    public void Read_Sessions_AreTypedRecords()
    {
        using var season = new TemporarySeason().With("sessions.csv", "date,athlete_id,focus,minutes,session_rpe,jump_contacts\n2026-03-02,P001,speed,45,6.5,60\n2026-03-03,p002,,,,\n");

        var sessions = season.Read().Sessions;

        Assert.Equal(new TrainingSession { AthleteId = "P001", Date = new DateOnly(2026, 3, 2), Focus = "speed", Minutes = 45, SessionRpe = 6.5, JumpContacts = 60 }, sessions[0]);
        Assert.Equal(new TrainingSession { AthleteId = "P002", Date = new DateOnly(2026, 3, 3) }, sessions[1]);
    }

    [Fact]
    public void Read_RowsOfOneSession_CountMinutesOnceAndEveryExercise()
    {
        using var season = new TemporarySeason().With("sessions.csv", Heads
            + "2026-03-02,P001,max strength,75,7.5,0,back squat,5,5,308.647\n"
            + "2026-03-02,P001,Max_Strength,75,,,bench_press,4,8,225\n"
            + "2026-03-02,P002,max_strength,,,,back_squat,1,5,315\n"
            + "2026-03-02,P002,max_strength,70,6,,,,,\n"
            + "2026-03-02,P002,max_strength,,,,back_squat,1,5,315\n"
            + "2026-03-02,P002,power,30,5,40,,,,\n"
            + "2026-03-03,P002,max_strength,60,6,,,,,\n");

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        Assert.Equal((11, 0), (data.RowsKept, data.RowsHeldBack));
        Assert.Equal(["P001 max strength 75 7.5", "P002 max_strength 70 6", "P002 power 30 5", "P002 max_strength 60 6"],
            data.Sessions.Select(s => FormattableString.Invariant($"{s.AthleteId} {s.Focus} {s.Minutes} {s.SessionRpe}")));
        var first = data.Sessions[0];
        Assert.Equal((0, 562.5), (first.JumpContacts, first.Work.LoadAu));
        Assert.Equal([("back_squat", 5, 5), ("bench_press", 4, 8)], first.Exercises.Select(e => (e.Lift, e.Sets, e.Repetitions)));
        // 5 × 5 × 140 kg.
        Assert.Equal(3500, VolumeLoad.Of(first.Exercises).Of("back_squat")!.VolumeLoad.Kilograms, 2);
        Assert.Equal(2, data.Sessions[1].Exercises.Count);
        Assert.Empty(data.Sessions[2].Exercises);
    }

    [Fact]
    public void Read_Kilograms_UnknownLiftsAndTheOwnBody_AreKept()
    {
        using var season = new TemporarySeason().With("sessions.csv", "date,athlete_id,lift,sets,reps,load_kg\n2026-03-02,P001,pull_up,4,8,0\n2026-03-02,P001,sled_push,6,1,120\n2026-03-02,P001,tyre_flip,6,1,150\n");

        var data = season.Read();

        Assert.Equal([new ExerciseSets("pull_up", 4, 8, Mass.Zero), new ExerciseSets("sled_push", 6, 1, Mass.FromKilograms(120)), new ExerciseSets("tyre_flip", 6, 1, Mass.FromKilograms(150))], Assert.Single(data.Sessions).Exercises);
        // A push of the sled is no tested lift, but an exercise of the kit's plans: it may be logged without a remark.
        Assert.Contains("The lift 'tyre_flip' is not a known one and was read as it stands", Assert.Single(data.Notes, n => n.File == "sessions.csv").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ContradictionBetweenFiles_NamesTheOtherFile()
    {
        using var season = new TemporarySeason()
            .With("sessions.csv", "date,athlete_id,focus,minutes\n2026-03-02,P001,power,60\n")
            .With("sessions.tsv", "date\tathlete_id\tfocus\tminutes\n2026-03-02\tP001\tpower\t90\n");

        var held = Assert.Single(season.Read().HeldBack);

        Assert.Equal(("sessions.tsv", "minutes", "90", "P001"), (held.File, held.Column, held.Value, held.AthleteId));
        Assert.Contains("60 minutes in sessions.csv line 2, here 90", held.Reason, StringComparison.Ordinal);
    }

    /// <summary>405 lb typed under kg: 2.2 times the tested 180 kg, and lb brings it back. A light day, an untested lift and a checked row are left alone.</summary>
    [Fact]
    public void Read_LoadInAnotherUnit_IsToldByTheTestedLift()
    {
        using var season = new TemporarySeason()
            .With("testing/2026-03-02/lifts.csv", "athlete_id,lift,load_kg,reps\nP001,back_squat,180,1\nP001,back_squat,60,5\n")
            .With("sessions.csv", "date,athlete_id,focus,lift,sets,repetitions,load_kg,checked\n"
                + "2026-03-04,P001,a,back_squat,5,3,405,\n2026-03-05,P001,a,back_squat,5,3,90,\n2026-03-06,P001,a,front_squat,5,3,390,\n2026-03-09,P002,a,back_squat,5,3,405,\n2026-03-10,P001,a,back_squat,5,3,405,yes\n2026-03-11,P001,a,back_squat,5,1,200,\n");

        var data = season.Read();

        var held = Assert.Single(data.HeldBack);
        Assert.Equal(("sessions.csv", 2, "load_kg", "405", "P001"), (held.File, held.Line, held.Column, held.Value, held.AthleteId));
        Assert.Equal("405 kg is 2.25 times the best back_squat of P001 on a testing day; it looks like lb.", held.Reason);
        Assert.Contains("write 183.7 (405 lb in kg)", held.Remedy, StringComparison.Ordinal);
        Assert.Equal(5, data.Sessions.Count);
    }

    [Fact]
    public void Between_TwoDays_GivesEveryAthleteHisDose()
    {
        using var season = new TemporarySeason().With("sessions.csv", Heads
            + "2026-03-02,P001,power,60,5,40,back_squat,5,5,308.647\n2026-03-04,P001,speed,40,,20,,,,\n2026-03-09,P001,power,60,5,40,,,,\n2026-03-03,P002,power,60,7,,,,,\n");

        var doses = SeasonDoses.Between(season.Read(), new(2026, 3, 2), new(2026, 3, 9), SdDivisor.Sample);

        Assert.Equal(["P001", "P002", "P003", "P004"], doses.Select(d => d.AthleteId));
        Assert.Equal([2, 1, 0, 0], doses.Select(d => d.Sessions));
        Assert.Equal((300, true), (doses[0].SessionLoad.Known, doses[0].SessionLoad.IsLowerBound));
        Assert.Equal(60, doses[0].Amount(DoseMeasure.JumpContacts));
        Assert.Equal(3500, doses[0].Amount(DoseMeasure.VolumeLoad)!.Value, 2);
        Assert.Equal(420, doses[1].Amount(DoseMeasure.SessionLoad));
        Assert.Null(doses[2].Amount(DoseMeasure.Sessions));
    }
}
