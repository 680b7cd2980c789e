using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Planning.Solving;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Tests.Solving;

/// <summary>A plan without fault, then broken in one way at a time: the check tells which rule.</summary>
public class PlanCheckTests
{
    private static readonly PlanProblem Week = SampleSquad.Problem(SampleSquad.Players(6, 1), SampleSquad.Slot(0, "max_strength"), SampleSquad.Slot(1, "speed"), SampleSquad.Slot(3, "power"));
    private static readonly IReadOnlyList<UnitSession> Plan = WeekPlanner.Plan(Week).Plan!.Sessions;

    [Fact]
    public void Check_PlanAsMade_HasNoFault() => Assert.Empty(PlanCheck.Of(Week, Plan));

    [Fact]
    public void Check_LongerThanTheSession_IsTold() => Tells(RuleIds.SessionMinutes, Week, Changed(0, s => s with { Minutes = 76 }), "76 minutes of 75");

    [Fact]
    public void Check_MoreOfAQualityThanAsked_IsTold() => Tells(RuleIds.DayDemands, Week, Changed(1, s => s with { Shared = [.. s.Shared, Item("back_squat", "3x5")] }), "back_squat is not of the day's kind");

    [Fact]
    public void Check_NothingForTheArms_IsTold()
        => Tells(RuleIds.DayDemands, Week, Changed(0, s => s with { Shared = [Item("back_squat", "5x5"), Item("deadlift", "5x5"), Item("side_plank", "3x8")] }), "0 of maximal strength, upper body, 1 to 2 asked");

    [Fact]
    public void Check_LighterThanTheDay_IsTold()
        => Tells(RuleIds.DayDemands, Week, Changed(0, s => s with { Shared = [.. s.Shared, Item("front_squat", "3x5")] }), "front_squat at 70 % is not of the day's intensity");

    [Fact]
    public void Check_ThreeSquats_IsTold()
        => Tells(RuleIds.PatternTimes, Week, Changed(0, s => s with { Shared = [Item("back_squat", "5x5"), Item("front_squat", "5x5"), Item("back_squat", "3x5"), Item("side_plank", "3x8")] }), "3 exercises of squat");

    [Fact]
    public void Check_CleansAboveTheirZone_IsTold()
    {
        var many = SampleTraining.Schemes.First(s => s.Id == "6x2_minute") with { Sets = 11 };
        Tells(RuleIds.ZoneRepetitions, Week, Changed(2, s => s with { Shared = [new(Find("power_clean"), many, null, default, false)] }), "22 repetitions, at most 20 from 80 %");
    }

    // 15 repetitions at 75 % are 5/8 of the 24 the guide has there, 12 at 80 % are 3/5 of 20.
    [Fact]
    public void Check_TwoCleansThatAreEachWithinTheirZone_IsTold()
        => Tells(RuleIds.ZoneRepetitions, Week, Changed(2, s => s with { Shared = [Item("power_clean", "5x3"), Item("hang_clean", "6x2_minute")] }), "cleans, snatches and pulls take 123 % of the guide for one movement");

    [Fact]
    public void Check_JumpsAboveTheGuide_IsTold()
    {
        var many = SampleTraining.Schemes.First(s => s.Id == "3x5_jumps") with { Sets = 30 };
        Tells(RuleIds.JumpContacts, Week, Changed(1, s => s with { Shared = [new(Find("pogo"), many, null, default, false)], Own = [] }), "150 ground contacts, at most 120");
    }

    [Fact]
    public void Check_RestrictedPlayer_IsTold()
    {
        var player = Week.Players[2] with { Restrictions = [new Restriction { AthleteId = "P02", From = SampleSquad.Monday, Pattern = MovementPattern.Sprint }] };
        Tells(RuleIds.Restrictions, Week with { Players = [.. Week.Players.Select(p => p.Id == player.Id ? player : p)] }, Plan, " is out for him");
    }

    [Fact]
    public void Check_DepthJumpOfAWeakPlayer_IsTold()
        => Tells(RuleIds.Prerequisites, Week with { Players = [.. Week.Players.Select(p => p with { Maxima = new Dictionary<string, KnownMaximum>() })] },
            Changed(1, s => s with { Shared = [Item("depth_jump", "3x5_jumps")] }), "back squat or body mass not tested");

    [Fact]
    public void Check_HeavyTheDayBeforeTheGame_IsTold()
        => Tells(RuleIds.GameGap, Week with { Games = [new Game(SampleSquad.Monday.AddDays(1))] }, Changed(0, s => s with { Shared = [Item("back_squat", "4x3")] }), "heavy work near the game on Tue 16 Jun");

    [Fact]
    public void Check_HeavyLegsOnFollowingDays_IsTold()
        => Tells(RuleIds.HeavyLowerGap, Week, [.. Plan.Select(s => s.Slot.Date.DayNumber - SampleSquad.Monday.DayNumber > 1 ? s : s with { Shared = [Item("back_squat", "4x3")] })], "24 h apart, 48 h asked");

    [Fact]
    public void Check_HighImpactOnFollowingDays_IsTold()
        => Tells(RuleIds.HighImpactGap, Week, [.. Plan.Select(s => s.Slot.Date.DayNumber - SampleSquad.Monday.DayNumber > 1 ? s : s with { Shared = [Item("bound", "3x5_jumps")] })], "24 h apart, 48 h asked");

    [Fact]
    public void Check_OneExerciseThreeTimes_IsTold()
        => Tells(RuleIds.ExerciseTimes, Week, [.. Plan.Select(s => s with { Shared = [Item("roll_out", "3x8")], Own = [] })], "roll_out 3 times");

    [Fact]
    public void Check_ThirteenHardSets_IsTold()
    {
        var thirteen = SampleTraining.Schemes.First(s => s.Id == "4x3") with { Sets = 13 };
        // Nothing else in the week, so that its own squats do not add to them.
        Tells(RuleIds.HardSets, Week, [Plan[0] with { Shared = [new(Find("back_squat"), thirteen, null, default, false)], Own = [] }], "13 hard sets of squat, at most 12");
    }

    [Fact]
    public void Check_MorePlayersThanPlaces_IsTold()
        => Tells(RuleIds.StationPlaces, Week with { Rooms = [SampleTraining.Room with { Stations = new Dictionary<string, int> { ["rack"] = 1 } }] },
            Changed(0, s => s with { Shared = [Item("back_squat", "5x5")], Own = [] }), "6 players at the rack, room for 3");

    [Fact]
    public void Check_RuleThatIsOff_IsNotLookedAt()
    {
        var off = Week with { Rules = PlanRules.With([PlanRules.Standard[RuleIds.SessionMinutes] with { Handling = RuleHandling.Off }]) };
        Assert.Empty(PlanCheck.Of(off, Changed(0, s => s with { Minutes = 76 })));
    }

    [Fact]
    public void Plan_RuleThatIsFlagged_IsKeptWhereItCanBe()
    {
        var flagged = PlanRules.With(PlanRules.Standard.All.Where(r => r.Id != RuleIds.Restrictions).Select(r => r with { Handling = RuleHandling.Flag }));
        Assert.Empty(WeekPlanner.Plan(Week with { Rules = flagged }).Plan!.Flags);
    }

    [Fact]
    public void Plan_OrderOff_PutsStationsTogether()
    {
        var off = Week with { Rules = PlanRules.With([PlanRules.Standard[RuleIds.SessionOrder] with { Handling = RuleHandling.Off }]) };
        foreach (var session in WeekPlanner.Plan(off).Plan!.Sessions)
        {
            var stations = session.Shared.Select(i => string.Join('+', i.Exercise.Stations)).ToList();
            Assert.Equal(stations.Order(StringComparer.Ordinal), stations);
            Assert.Equal(session.Shared, session.For(session.Players[0]).Take(session.Shared.Count));
        }
    }

    [Fact]
    public void Plan_RuleThatIsFlagged_IsBrokenAndSaidSo()
    {
        var soft = Week with
        {
            Sessions = [SampleSquad.Slot(0, "max_strength", 30)],
            Rules = PlanRules.With([PlanRules.Standard[RuleIds.SessionMinutes] with { Handling = RuleHandling.Flag }]),
        };
        Assert.Contains(WeekPlanner.Plan(soft).Plan!.Flags, f => f.RuleId == RuleIds.SessionMinutes);
    }

    private static Exercise Find(string id) => SampleTraining.Exercises.Find(id)!;

    private static PlannedItem Item(string exercise, string scheme) => new(Find(exercise), SampleTraining.Schemes.First(s => s.Id == scheme), null, default, false);

    private static IReadOnlyList<UnitSession> Changed(int index, Func<UnitSession, UnitSession> change) => [.. Plan.Select((s, i) => i == index ? change(s) : s)];

    private static void Tells(string rule, PlanProblem problem, IReadOnlyList<UnitSession> sessions, string text)
        => Assert.Contains(PlanCheck.Of(problem, sessions), f => f.RuleId == rule && f.Text.Contains(text, StringComparison.Ordinal));
}
