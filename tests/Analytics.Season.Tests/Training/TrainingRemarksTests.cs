using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Training;

/// <summary>What is worth saying about the folder <c>training</c> though nothing is held back.</summary>
public sealed class TrainingRemarksTests
{
    private const string Lifts = "testing/2026-03-02/lifts.csv";
    private const string Tested = "athlete_id,lift,load_lb,reps\nP001,back_squat,405,3\n";
    private const string Exercise = "exercise,pattern,quality,load_basis,repetition_time_s,stations,implement\n";

    public static TheoryData<string, string, string> Remarks => new()
    {
        { "training/exercises.csv", Exercise + "box_squat,squat,maximal_strength,back_sqaut,4,,\n", "Nobody was tested in 'back_sqaut' (did you mean back_squat?), so box_squat cannot be loaded yet: test first." },
        { "training/exercises.csv", Exercise + "incline,push,maximal_strength,bench_press,3,,\nfloor_press,push,maximal_strength,bench_press,3,,\n", "Nobody was tested in 'bench_press', so incline, floor_press cannot be loaded yet: test first." },
        { "training/exercises.csv", Exercise + "box_squat,squat,maximal_strength,back_squat,4,rakc,\n", "No room has the station 'rakc' (did you mean rack?), so box_squat cannot be planned; add it to rooms.csv." },
        { "training/exercises.csv", "exercise,pattern,quality,repetition_time_s,prefrence\nlunge,single_leg,maximal_strength,3,1\n", "The column 'prefrence' is not known and was not read; did you mean preference?" },
        { "training/exercises.csv", Exercise, "The table has a head but no rows." },
        { "training/exercises.csv", "exercise,pattern\nlunge,single_leg\n", "No row of this file could be used, so what comes with the kit is taken in its place." },
        { "training/exercises.csv", Exercise + "tuck_jump,jump,maximal_strength,none,2,,\n", "No scheme fits tuck_jump: quality, pattern, one side or both, and per cent must fit, so it is never planned. Add a scheme to schemes.csv." },
        { "training/schemes.csv", "scheme,kind,qualities,patterns,sets,repetitions,rest_s\nrows,straight,acceleration,pull,3,5,90\n", "No exercise fits rows: quality, pattern, one side or both, and per cent must fit, so it is never used." },
        { "training/rooms.csv", "room,station,places\nweight room,rakc,8\n", "No exercise is done at the station 'rakc' (did you mean rack?), so it has no effect." },
        { "training/weights.csv", "item,weight_lb,pairs\nbar,45,\n", "There is no plate in the list, so nothing can be put on the bar; write a row 'plate' for each kind, with its weight and pairs at one station." },
        { "training/weights.csv", "item,weight_lb,pairs\nplate,45,3\n", "There is no bar in the list, so no load of a barbell can be put together; write a row 'bar' with its weight." },
        { "training/weights.csv", "item,weight_lb,pairs\nbar,45,\nplate,45,3\ndumbell,50,\n", "No exercise is done with 'dumbell', so its weights are not used; did you mean dumbbell?" },
        { "training/weights.csv", "item,weight_lb,weight_kg,pairs\nbar,,20,\nplate,45,,3\n", "Weights stand there in lb and in kg; loads are shown in lb, the unit of the first plate." },
        { "training/week-shapes.csv", "phase,weekday,kind,minutes\noff_season,monday,power,60\npre_season,monday,power,60\n", "There is no week of in_season, so the one that comes with the kit is taken." },
        { "training/day-kinds.csv", "kind,quality,least,most,own_work\nmine,acceleration,1,2,yes\n", "The usual week of pre_season has days of the kind max_strength, power, speed, which this file does not have; they were left out. Write week-shapes.csv with kinds of your own." },
        { "training/day-kinds.csv", "kind,name,quality,least,most,own_work\nspeed,a,acceleration,1,2,yes\nspeed,b,trunk_control,1,2,yes\n", "Line 3 gives the kind 'speed' another name, 'b'; 'a' was taken." },
        { "training/rules.csv", "rule,value,unit,handling\ntest_old_after,200,days,\n", "A test expires after 182 days, not later than it counts as old (200 days), so no test is ever told as old; check test_old_after and test_expires_after." },
        { "training/notes.txt", "x", "This file is not part of 'training' and was not read." },
    };

    [Theory]
    [MemberData(nameof(Remarks))]
    public void Read_OddText_IsRemarked(string path, string text, string remark)
    {
        using var season = new TemporarySeason().With(Lifts, Tested).With(path, text);

        var data = season.Read();

        Assert.Contains(data.Notes, n => n.File == path && n.Text == remark);
    }

    [Fact]
    public void Read_ExerciseThatWasTestedItself_NeedsNoOtherLift()
    {
        using var season = new TemporarySeason().With(Lifts, Tested).With("training/exercises.csv", Exercise + "back_squat,squat,maximal_strength,leg_press,4,,\n");

        Assert.Empty(season.Read().Notes);
    }

    [Fact]
    public void Read_FileCalledTraining_IsRemarked()
    {
        using var season = new TemporarySeason().With(Lifts, Tested).With("training", "x");

        Assert.Equal("This is a file; 'training' is a folder of a season. It was not read.", Assert.Single(season.Read().Notes).Text);
    }

    [Fact]
    public void Read_InformativeColumnsOfAnExportedPlan_AreNotRemarked()
    {
        using var season = new TemporarySeason().With(Lifts, Tested)
            .With("training/plan.csv", "date,day,group,athlete_id,name,exercise,scheme,part,keep,sets,repetitions,load_kg,minutes,why\n2026-03-02,Monday,,P001,Ada Stone,back_squat,strength_5x5_75,own,keep,5,5,142.5,14,his need\n");

        var data = season.Read();

        Assert.Empty(data.Notes);
        Assert.Equal("P001", Assert.Single(data.Training.Earlier).AthleteId);
    }
}
