using Analytics.Metrics.Trials;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

/// <summary>What the reader decides where a row alone does not tell.</summary>
public sealed class SeasonRulesTests
{
    private const string First = "testing/2026-03-02/";
    private const string Later = "testing/2026-03-09/";

    [Fact]
    public void Read_NoBodyMassThatDay_TakesTheLatestBefore()
    {
        using var season = new TemporarySeason().With(First + "body.csv", "athlete_id,mass_kg,stature_cm\nP001,101,184\n")
            .With(Later + "lifts.csv", "athlete_id,lift,load_lb,reps\nP001,deadlift,500,2\nP002,deadlift,450,2\n");

        var day = season.Read().Days[1];

        Assert.Equal((101, new DateOnly(2026, 3, 2), 1.84), (day.Athletes[0].BodyMass!.Value.Kilograms, day.Athletes[0].BodyMassDate, day.Athletes[0].Stature!.Value.Metres));
        Assert.Equal((null, null, 1.8034), (day.Athletes[1].BodyMass, day.Athletes[1].BodyMassDate, Math.Round(day.Athletes[1].Stature!.Value.Metres, 9)));
    }

    [Fact]
    public void Read_ResultOfInjuredAthlete_IsKeptWithRemark()
    {
        using var season = new TemporarySeason()
            .With("availability.csv", "athlete_id,from,to,status,note\nP001,2026-02-20,2026-03-10,injured,knee\nP002,2026-02-20,,limited,\nP003,2026-02-20,2026-03-01,absent,\n")
            .With(First + "body.csv", "athlete_id,mass_lb\nP001,225\nP002,231\nP003,305\n");

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        var note = Assert.Single(data.Notes);
        Assert.Equal("P001 (Ada Stone) is marked injured from 2026-02-20 to 2026-03-10 but has 1 result on 2026-03-02; kept. Check the spell or the identifier.", note.Text);
    }

    [Fact]
    public void Read_OverlappingSpells_AreKeptWithRemark()
    {
        using var season = new TemporarySeason().With("availability.csv", "athlete_id,from,to,status\nP001,2026-02-20,2026-03-10,injured\nP001,2026-03-01,2026-03-20,ill\n");

        var data = season.Read();

        Assert.Equal(2, data.Athletes[0].Absences.Count);
        Assert.Contains(data.Notes, n => n.Text.Contains("the spells overlap", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_DuplicateAthlete_KeepsTheFirst()
    {
        using var season = new TemporarySeason().With("athletes.csv", TemporarySeason.Squad + "\np001,Eve Moss,QB,Backs,74,2004\n");

        var data = season.Read();

        Assert.Equal("Ada Stone", data.Athletes[0].Name);
        var held = Assert.Single(data.HeldBack);
        Assert.Equal((6, "'p001' already stands on line 2 (Ada Stone)"), (held.Line, held.Reason[(held.Reason.IndexOf('\'', StringComparison.Ordinal))..^1]));
    }

    [Fact]
    public void Read_TrainingYears_AreYearsWithDecimalsOrNotKnown()
    {
        using var season = new TemporarySeason().With("athletes.csv", "athlete_id,name,training_years\nP001,Ada Stone,3.5\nP002,Ben Vale,0\nP003,Cal Reed,\n");

        Assert.Equal([3.5, 0, null], season.Read().Athletes.Select(a => a.TrainingYears));
    }

    [Fact]
    public void Read_WrongOptionalCellOfAthlete_LeavesOutTheCellOnly()
    {
        using var season = new TemporarySeason().With("athletes.csv", "athlete_id,name,position,group,stature_in,birth_year,training_years\nP001,Ada Stone,LB,,184,1884,2019\n").With(First + "body.csv", "athlete_id,mass_lb\nP001,225\n");

        var data = season.Read();

        Assert.Equal(("LB", null, null, null), (data.Athletes[0].Group, data.Athletes[0].Stature, data.Athletes[0].BirthYear, data.Athletes[0].TrainingYears));
        Assert.Equal([("stature_in", 0), ("birth_year", 0), ("training_years", 0)], data.HeldBack.Select(h => (h.Column, h.Rows)));
        Assert.Contains("184 in is outside the allowed 47.3 to 94.4 in; it looks like cm; the cell was left out, the athlete kept", data.HeldBack[0].Reason, StringComparison.Ordinal);
        Assert.Equal((2, 0), (data.RowsKept, data.RowsHeldBack));
        Assert.Equal(2, SeasonCheckText.ExitCode(data));
    }

    [Fact]
    public void Read_AttemptsWithoutNumber_AreNumberedAsTheyStand()
    {
        using var season = new TemporarySeason().With(First + "jumps.csv", "athlete_id,jump,method,height_in\nP001,countermovement,mat,25\nP001,countermovement,mat,25\nP001,squat,mat,24\nP002,countermovement,mat,30\n");

        var jumps = season.Read().Days[0].Athletes.SelectMany(a => a.Of<JumpTrial>());

        Assert.Equal([1, 2, 1, 1], jumps.Select(j => j.Attempt));
    }

    [Fact]
    public void Read_SameAttemptNumberOnDifferentScales_IsNoDuplicate()
    {
        using var season = new TemporarySeason()
            .With(First + "sprints.csv", "athlete_id,attempt,timing,start,t_10yd_s\nP001,1,electronic,signal,1.72\nP001,1,hand,signal,1.55\n")
            .With(First + "jumps.csv", "athlete_id,jump,method,attempt,flight_ms,contact_ms,obstacle_cm\nP001,drop,mat,1,520,190,30\nP001,drop,mat,1,530,200,45\n")
            .With(First + "agility.csv", "athlete_id,test,attempt,timing,side,time_s\nP001,505,1,hand,left,2.3\nP001,505,1,hand,right,2.4\n");

        Assert.Empty(season.Read().HeldBack);
    }

    [Fact]
    public void Read_NoTimingAndNoDefault_IsHeldBack()
    {
        using var season = new TemporarySeason().With("season.json", "{\"club\":\"A\",\"season\":\"B\",\"from\":\"2026-01-05\",\"to\":\"2026-07-31\"}")
            .With(First + "sprints.csv", "athlete_id,start,t_10yd_s\nP001,signal,1.72\n");

        var held = Assert.Single(season.Read().HeldBack);

        Assert.Equal("There is no timing.", held.Reason);
        Assert.Equal("Write one of: electronic, hand, video; or set \"timing\" under \"defaults\" in season.json.", held.Remedy);
    }

    [Fact]
    public void Read_SeveralFaultsInARow_AreToldTogetherAndCountedOnce()
    {
        using var season = new TemporarySeason().With(First + "lifts.csv", "athlete_id,lift,load_lb,reps\nP9,back_squat,x,y\n");

        var data = season.Read();

        var held = Assert.Single(data.HeldBack);
        Assert.Equal(1, data.RowsHeldBack);
        Assert.Contains("; also load_lb: 'x' is not a number; also reps: 'y' is not a number", held.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_UnknownColumn_IsRemarkedWithTheNearestKnown()
    {
        using var season = new TemporarySeason().With(First + "lifts.csv", "athlete_id,lift,load_lb,reps,tempo,rirr\nP001,back_squat,405,3,slow,2\n");

        Assert.Equal(["The column 'tempo' is not known and was not read.", "The column 'rirr' is not known and was not read; did you mean rir?"], season.Read().Notes.Select(n => n.Text));
    }

    [Fact]
    public void Read_SecondColumnWithoutUnit_IsRemarkedNotRead()
    {
        using var season = new TemporarySeason().With(First + "lifts.csv", "athlete_id,lift,load_lb,reps,load,load_pct\nP001,back_squat,405,3,184,85\n");

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        Assert.Equal(["The column 'load' does not say its unit, so it was not read; 'load_lb' was.", "The unit of the column 'load_pct' is not known, so it was not read; 'load_lb' was."], data.Notes.Select(n => n.Text));
    }

    [Fact]
    public void Read_WorthwhileChangeOfUnknownMetric_IsRemarked()
    {
        using var season = new TemporarySeason().With("season.json", "{\"club\":\"A\",\"season\":\"B\",\"from\":\"2026-01-05\",\"to\":\"2026-07-31\",\"worthwhile\":{\"body_mas\":1}}");

        Assert.Contains(season.Read().Notes, n => n.Text == "'worthwhile.body_mas' is no known metric and has no effect; did you mean body_mass?");
    }

    [Fact]
    public void Read_UnknownLift_IsKeptWithRemark()
    {
        using var season = new TemporarySeason().With(First + "lifts.csv", "athlete_id,lift,load_lb,reps\nP001,back_sqaut,405,3\nP002,back_sqaut,385,3\n");

        var data = season.Read();

        Assert.Equal(2, data.Days[0].Athletes.Count);
        Assert.Contains("The lift 'back_sqaut' is not a known one and was read as it stands; did you mean back_squat?", Assert.Single(data.Notes).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_PerceivedExertion_BecomesRepetitionsInReserve()
    {
        using var season = new TemporarySeason().With(First + "lifts.csv", "athlete_id,lift,load_lb,reps,rpe\nP001,back_squat,405,3,8.5\n");

        Assert.Equal(1.5, season.Read().Days[0].Athletes[0].Of<LiftSet>().Single().RepetitionsInReserve);
    }

    [Fact]
    public void Read_Settings_AreAllUsed()
    {
        using var season = new TemporarySeason().With("season.json", """
            {"club":"\"><script>","season":"S","from":"2026-01-05","to":"2026-07-31","units":{"mass":"KG","jump":"cm","speed":"km/h","colour":"red"},
             "defaults":{"timing":"hand","start":"first movement","jump_method":"force-plate"},
             "retests":[["2026-01-19","2026-01-22"]],"worthwhile":{"share":0.3,"sprint_10yd":0.02},"test_minutes":{"back_squat_1rm":6,"bench_pres_1rm":5},"seasn":1}
            """);

        var data = season.Read();

        Assert.Equal(("\"><script>", "S", "kg", "cm", "km/h"), (data.Settings.Club, data.Settings.Season, data.Settings.MassUnit, data.Settings.JumpUnit, data.Settings.SpeedUnit));
        Assert.Equal((TimingMethod.Hand, StartType.FirstMovement, JumpMethod.ForcePlate), (data.Settings.DefaultTiming, data.Settings.DefaultStart, data.Settings.DefaultJumpMethod));
        Assert.Equal(new RetestPair(new DateOnly(2026, 1, 19), new DateOnly(2026, 1, 22)), Assert.Single(data.Settings.Retests));
        Assert.Equal((0.3, 0.02), (data.Settings.WorthwhileShare, data.Settings.Worthwhile["sprint_10yd"]));
        Assert.Equal(6, data.Settings.TestMinutes["back_squat_1rm"]);
        Assert.Contains(data.Notes, n => n.Text == "'test_minutes.bench_pres_1rm' is no known metric and has no effect; did you mean bench_press_1rm?");
        Assert.Contains(data.Notes, n => n.Text.Contains("'units.colour'", StringComparison.Ordinal));
        Assert.Contains(data.Notes, n => n.Text.Contains("'seasn' is not known and was not read; did you mean season?", StringComparison.Ordinal));
        Assert.Contains(data.Notes, n => n.Text.Contains("'retests' names 2026-01-19, but there is no such testing day", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_Twice_GivesTheSame()
    {
        using var season = new TemporarySeason().With(First + "body.csv", "athlete_id,mass_lb\nP001,225\nP9,1\n");

        Assert.Equal(SeasonCheckText.Lines(season.Read()), SeasonCheckText.Lines(season.Read()));
    }

    [Fact]
    public void Read_File_IsNamedWithItsHash()
    {
        using var season = new TemporarySeason().With(First + "body.csv", "athlete_id,mass_lb\nP001,225\nP9,1\n");

        // By sha256sum of GNU coreutils.
        Assert.Equal(new InputFile(First + "body.csv", "3ca40b15f78ad75a737362236144a884e1be2bd5f860e0567aba056c6b471697", 2, 1, 1), season.Read().Files[^1]);
    }
}
