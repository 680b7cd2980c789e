using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;
using Analytics.Season.Tests.Support;
using Analytics.Season.Training;

namespace Analytics.Season.Tests.Training;

/// <summary>What the folder <c>training</c> says, typed.</summary>
public sealed class TrainingReadingTests
{
    [Theory]
    [InlineData("lb")]
    [InlineData("kg")]
    public void Read_NoFolder_HasWhatComesWithTheKit(string unit)
    {
        using var season = new TemporarySeason().With("season.json", TemporarySeason.Settings.TrimEnd()[..^1] + ",\"units\":{\"mass\":\"" + unit + "\"}}");

        var training = season.Read().Training;

        Assert.Empty(training.OwnFiles);
        Assert.Equal(72, training.Exercises.All.Count);
        Assert.Equal(unit, training.Weights.Unit);
        Assert.Equal(unit == "kg" ? 20 : 20.41165665, training.Weights.Bar!.Value.Kilograms, 8);
        Assert.Empty(training.Sessions.Select(s => s.Kind).Concat(training.Earlier.Select(e => e.ExerciseId)).Concat(training.Restrictions.Select(r => r.AthleteId)));
    }

    [Fact]
    public void Read_Exercises_AreTyped()
    {
        using var season = new TemporarySeason().With("training/exercises.csv",
            "Exercise;Name;Pattern;Quality;Load basis;Own maximum percent;Least percent;Most percent;Least height (cm);Most height (cm);Unilateral;Repetition time (s);Jump contacts;Impact;Stations;Implement;Preference;Least squat ratio;Most body mass (lb);Least training years;Prerequisite;Caution\n"
            + "Split Squat;split squat;single leg;maximal strength;Back squat;55,5;40;90;;;yes;2,5;;;Rack + Boxes;Barbell;1;1,2;220;1,5;first;then\n"
            + "hop;;jump;reactive ability;height;;;;30;60;no;1;2;HIGH;;;;;;;;\n");

        var training = season.Read().Training;

        Assert.Equal(["exercises.csv"], training.OwnFiles);
        var squat = training.Exercises.Find("split_squat")!;
        Assert.Equal((MovementPattern.SingleLeg, TrainedQuality.MaximalStrength, LoadBasis.Of("back_squat"), 55.5, 40.0, 90.0, true, 2.5), (squat.Pattern, squat.Quality, squat.Basis, squat.OwnMaximumPercent, squat.LeastPercent, squat.MostPercent, squat.IsUnilateral, squat.RepetitionTime.Seconds));
        Assert.Equal(["rack", "boxes"], squat.Stations);
        // 220 lb x 0.45359237 = 99.7903214 kg, by the 1959 definition of the pound.
        Assert.Equal(("barbell", 1, 1.2, 99.7903214, 1.5, "first", "then"), (squat.Implement, squat.Preference, squat.LeastSquatRatio, Math.Round(squat.MostBodyMass!.Value.Kilograms, 7), squat.LeastTrainingYears, squat.Prerequisite, squat.Caution));
        var hop = training.Exercises.Find("hop")!;
        Assert.Equal(("hop", 0.3, 0.6, 2, Impact.High, 2), (hop.Name, hop.LeastHeight!.Value.Metres, hop.MostHeight!.Value.Metres, hop.JumpContacts, hop.Impact, hop.Preference));
        Assert.Empty(hop.Stations);
        Assert.Null(hop.Implement);
    }

    [Fact]
    public void Read_Schemes_AreTyped()
    {
        using var season = new TemporarySeason().With("training/schemes.csv",
            "scheme,name,kind,qualities,patterns,sets,reps,each_side,least_percent,most_percent,reserve,rest_min,interval_s,inner_rest_s,partner_repetitions,source\n"
            + "pair,heavy and fast,contrast,maximal_strength + explosive_power,squat+hinge,4,3,no,80,85,2,2.5,,90,4,mine\n"
            + "minute,,On the minute,explosive_power,,6,2,,80,,,,60,,,\n");

        var schemes = season.Read().Training.Schemes;

        var pair = schemes[0];
        Assert.Equal((SchemeKind.Contrast, 4, 3, false, 80.0, 85.0, 2.0, 150.0, 90.0, 4, "mine"), (pair.Kind, pair.Sets, pair.Repetitions, pair.IsEachSide, pair.LeastPercent, pair.MostPercent, pair.Reserve, pair.Rest.Seconds, pair.InnerRest.Seconds, pair.PartnerRepetitions, pair.Source));
        Assert.Equal([TrainedQuality.MaximalStrength, TrainedQuality.ExplosivePower], pair.Qualities);
        Assert.Equal([MovementPattern.Squat, MovementPattern.Hinge], pair.Patterns);
        var minute = schemes[1];
        Assert.Equal((SchemeKind.OnTheMinute, 60.0, 80.0, "minute", "common practice, no source"), (minute.Kind, minute.Interval.Seconds, minute.MostPercent, minute.Name, minute.Source));
        Assert.Null(minute.IsEachSide);
        Assert.Empty(minute.Patterns);
    }

    [Fact]
    public void Read_KindsAndWeeks_ArePutTogether()
    {
        using var season = new TemporarySeason()
            .With("training/day-kinds.csv", "kind,name,quality,least,most,own_work,most_percent,source\nBig Day,the big day,maximal_strength,1,2,no,85,mine\nbig day,,trunk_control,,1,yes,,\n")
            .With("training/week-shapes.csv", "phase,weekday,days_to_game,kind,minutes,source\noff_season,Monday,,big day,75,mine\nin_season,,4,big_day,60,\npre_season,tuesday,,big_day,70,\n");

        var training = season.Read().Training;

        var kind = Assert.Single(training.Kinds);
        Assert.Equal(("big_day", "the big day", "mine"), (kind.Id, kind.Name, kind.Source));
        Assert.Equal([new DayDemand(TrainedQuality.MaximalStrength, 1, 2, false) { MostPercent = 85 }, new DayDemand(TrainedQuality.TrunkControl, 0, 1, true)], kind.Demands);
        Assert.Equal([SeasonPhase.OffSeason, SeasonPhase.PreSeason, SeasonPhase.InSeason], training.Shapes.Select(s => s.Phase));
        Assert.Equal(new ShapeDay(DayOfWeek.Monday, null, "big_day", 75), Assert.Single(training.Shapes[0].Days));
        Assert.Equal(new ShapeDay(null, 4, "big_day", 60), Assert.Single(training.Shapes[2].Days));
    }

    [Fact]
    public void Read_Rules_ChangeTheFiguresOfTheirRowsOnly()
    {
        using var season = new TemporarySeason().With("training/rules.csv",
            "rule,value,unit,handling,source\nHeavy lower gap,72,H,flag,\nheavy_player_mass,231,lb,,team doctor\nsession_order,,,off,\nrestrictions,,,refuse,\nhard_sets,,sets,,\n");

        var rules = season.Read().Training.Rules;

        Assert.Equal((72, RuleHandling.Flag, "the coach"), (rules.Value(RuleIds.HeavyLowerGap), rules[RuleIds.HeavyLowerGap].Handling, rules[RuleIds.HeavyLowerGap].Source));
        // 231 lb x 0.45359237 = 104.77983747 kg.
        Assert.Equal(104.77983747, rules.Value(RuleIds.HeavyPlayer), 8);
        Assert.False(rules.IsOn(RuleIds.SessionOrder));
        Assert.True(rules.Refuses(RuleIds.Restrictions));
        Assert.Equal((12, 48), (rules.Value(RuleIds.HardSets), rules.Value(RuleIds.GameGap)));
    }

    [Fact]
    public void Read_Calendar_HasSessionsAndGamesByDate()
    {
        using var season = new TemporarySeason()
            .With("training/rooms.csv", "room,station,places\nBig Hall,rack,8\nBig Hall,turf,0\nfield,turf,30\n")
            .With("training/calendar.csv", "date,start,kind,minutes,room,groups\n2026-03-07,15:00,game,,,\n2026-03-03,16:30,Max strength,75,big hall,Linebackers + receivers\n2026-03-02,7:00,speed,60,field,\n2026-03-02,8:00,power,60,,\n2026-03-09,,recovery,40,,\n");

        var training = season.Read().Training;

        Assert.Equal([new Game(new DateOnly(2026, 3, 7), new TimeOnly(15, 0))], training.Games);
        Assert.Equal(["speed", "power", "max_strength", "recovery"], training.Sessions.Select(s => s.Kind));
        var strength = training.Sessions[2];
        Assert.Equal((new DateOnly(2026, 3, 3), new TimeOnly(16, 30), 75, "Big Hall"), (strength.Date, strength.Start, strength.Minutes, strength.Room));
        Assert.Equal(["Linebackers", "Receivers"], strength.Groups);
        Assert.Equal((8, 0, 0), (training.Rooms[0].Places("rack"), training.Rooms[0].Places("turf"), training.Rooms[0].Places("sled")));
        Assert.Equal(("", 2), (training.Sessions[1].Room, training.Rooms.Count));
    }

    [Fact]
    public void Read_Weights_AreSortedAsTheyAreUsed()
    {
        using var season = new TemporarySeason().With("training/weights.csv", "item,weight_kg,pairs\nplate,5,1\nbar,15,\nplate,20,2\nplate,20,1\nDumbbell,30,\ndumbbell,20,\ndumbbell,20,\n");

        var weights = season.Read().Training.Weights;

        Assert.Equal(15, weights.Bar!.Value.Kilograms);
        Assert.Equal([(20, 3), (5, 1)], weights.Plates.Select(p => (p.Weight.Kilograms, p.PairsPerStation)));
        Assert.Equal([20, 30], weights.Singles["dumbbell"].Select(w => w.Kilograms));
        Assert.Equal([5, 20], weights.Singles["plate"].Select(w => w.Kilograms));
        Assert.Equal("kg", weights.Unit);
    }

    [Fact]
    public void Read_Restrictions_ForbidWhatTheyName()
    {
        using var season = new TemporarySeason().With("training/restrictions.csv", "athlete_id,from,to,out,note\np001,2026-03-01,2026-03-10,Single leg + trunk control + back squat,knee\nP002,2025-11-01,,everything,\n");

        var data = season.Read();

        var of = data.Training.Restrictions;
        Assert.Equal(["P001", "P001", "P001", "P002"], of.Select(r => r.AthleteId));
        bool Forbidden(string exercise, int day) => of.Take(3).Any(r => r.Forbids(data.Training.Exercises.Find(exercise)!, new DateOnly(2026, 3, day)));
        Assert.True(Forbidden("split_squat", 1) && Forbidden("dead_bug", 10) && Forbidden("back_squat", 5));
        Assert.False(Forbidden("split_squat", 11) || Forbidden("front_squat", 5));
        Assert.True(of[3].Forbids(data.Training.Exercises.Find("pogo_jump")!, new DateOnly(2026, 7, 1)));
        Assert.Equal(2, data.Files.Single(f => f.Path == "training/restrictions.csv").Kept);
    }

    [Fact]
    public void Read_Plan_KeepsWhoWhatAndHow()
    {
        using var season = new TemporarySeason().With("training/plan.csv", "date,group,athlete_id,exercise,scheme,part,keep,sets,repetitions,load_lb\n2026-03-02,linebackers,,Back squat,strength_5x5_75,,,5,5,\n2026-03-02,,p002,pull_up,,,never,,,\n2026-03-03,,P001,back_squat,,shared,keep,5,3,300\n");

        var earlier = season.Read().Training.Earlier;

        Assert.Equal(("Linebackers", null, "back_squat", "strength_5x5_75", false, ChoiceForce.Planned, 5), (earlier[0].Group, earlier[0].AthleteId, earlier[0].ExerciseId, earlier[0].SchemeId, earlier[0].IsOwnWork, earlier[0].Force, earlier[0].Sets));
        Assert.Equal((null, "P002", "pull_up", null, true, ChoiceForce.Never), (earlier[1].Group, earlier[1].AthleteId, earlier[1].ExerciseId, earlier[1].SchemeId, earlier[1].IsOwnWork, earlier[1].Force));
        // 300 lb x 0.45359237 = 136.077711 kg.
        Assert.Equal((false, ChoiceForce.Keep, 136.077711, "training/plan.csv line 4"), (earlier[2].IsOwnWork, earlier[2].Force, Math.Round(earlier[2].LoadKilograms!.Value, 6), earlier[2].Place));
    }

    // Two sessions of a group on one day have rows of their own; without starts the second row of an exercise could not be told from the first.
    [Fact]
    public void Read_PlanWithStarts_KeepsARowForEachSession()
    {
        using var season = new TemporarySeason().With("training/plan.csv", "date,start,group,exercise,keep\n2026-03-02,7:00,Linebackers,back_squat,keep\n2026-03-02,16:00,Linebackers,back_squat,never\n2026-03-02,,Linebackers,back_squat,\n"
            + "2026-03-02,07:00:00,Linebackers,back_squat,\n2026-03-02,,Linebackers,back_squat,\n2026-03-02,25:00,Linebackers,front_squat,\n");

        var data = season.Read();

        Assert.Equal([(new TimeOnly(7, 0), ChoiceForce.Keep), (new TimeOnly(16, 0), ChoiceForce.Never), ((TimeOnly?)null, ChoiceForce.Planned)], data.Training.Earlier.Select(e => (e.Start, e.Force)));
        Assert.Equal([(5, "The same exercise of the same session already stands in line 2."), (6, "The same exercise of the same day already stands in line 4."), (7, "'25:00' is not a time of day.")],
            data.HeldBack.Where(r => r.File == "training/plan.csv").Select(r => (r.Line, r.Reason)));
    }

    [Fact]
    public void Read_TwoFilesOfOneName_AreReadAsOne()
    {
        using var season = new TemporarySeason().With("training/restrictions.csv", "athlete_id,from,out\nP001,2026-03-01,jump\n").With("training/Restrictions.tsv", "athlete_id\tfrom\tout\nP002\t2026-03-01\tjump\n");

        Assert.Equal(["P002", "P001"], season.Read().Training.Restrictions.Select(r => r.AthleteId));
    }

    [Fact]
    public void Read_UnusableFile_IsNoFileOfItsOwn()
    {
        using var season = new TemporarySeason().With("training/schemes.csv", "scheme\nx\n").With("training/exercises.csv", TrainingText("exercises.csv"));

        var training = season.Read().Training;

        Assert.Equal(["exercises.csv"], training.OwnFiles);
        Assert.Equal(39, training.Schemes.Count);
    }

    private static string TrainingText(string file) => ShippedTraining.Text(file);
}
