using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Planning.Tests.Loads;

// Expected loads by hand: per cent of the stated figure, down to the next sum of bar and plates.
public sealed class LoadPlanTests
{
    private static readonly KnownMaximum Squat = Made.Tested("back_squat", 201);

    [Fact]
    public void Straight_RoundsDown()
    {
        // 75 % of 201 = 150.75.
        var plan = Of(Made.Squat, Made.Sets(5, 5, 75), Squat);
        Assert.Equal([150, 150, 150, 150, 150], Kilograms(plan));
        Assert.Equal(201, plan.BaseKilograms);
        Assert.False(plan.IsLowerSide);
        Assert.False(plan.IsAboveTested);
        Assert.Empty(plan.Notes);
        Assert.Null(plan.Instead);
        // 50 % and 75 % of 150 are 75 and 112.5.
        Assert.Equal([(5, 75.0), (3, 112.5)], plan.WarmUp.Select(w => (w.Repetitions, w.Load.Kilograms)));
    }

    [Fact]
    public void Pounds_AreWholeSumsOfPlates()
    {
        // 445 lb: 75 % = 333.75; 45 + 2 × (3 × 45 + 5 + 2.5) = 330; + 2.5 a side is 335.
        var plan = Of(Made.Squat, Made.Sets(1, 5, 75), Made.Tested("back_squat", 445 * 0.45359237), Made.Pounds);
        Assert.Equal(Mass.FromPounds(330), Assert.Single(plan.Working));
    }

    [Fact]
    public void Ramp_LastSetIsTheTopSet()
    {
        // 60, 72.5, 85 % of 201: 120.6, 145.7, 170.9. One warm-up set at half of the first.
        var plan = Of(Made.Squat, Made.Ramp(3, 3, 60, 85), Squat);
        Assert.Equal([120, 145, 170], Kilograms(plan));
        Assert.Equal(new RampSet(5, Mass.FromKilograms(60)), Assert.Single(plan.WarmUp));
    }

    [Fact]
    public void ReserveOnly_TakesTheTableThatIsNamed()
    {
        // 8 to failure: textbook 80 % of 200 = 160, weight-room chart 78 % = 156.
        var item = Made.Item(Made.Squat, Made.Sets(1, 5, reserve: 3));
        var player = Made.Player(Made.Tested("back_squat", 200));
        Assert.Equal([160], Kilograms(LoadPlan.Of(player, item, Made.Kilograms, PlanRules.Standard, Made.Today)));
        Assert.Equal([155], Kilograms(LoadPlan.Of(player, item, Made.Kilograms, PlanRules.Standard, Made.Today, RepetitionTables.WeightRoom)));
    }

    [Fact]
    public void OtherExercise_IsWorkedOutFromItsBasis_AndSaysSo()
    {
        // 85 % of 201 = 170.85; 75 % of that = 128.1.
        var plan = Of(FrontSquat, Made.Sets(1, 5, 75), Squat);
        Assert.Equal([127.5], Kilograms(plan));
        Assert.Equal(170.85, plan.BaseKilograms!.Value, 9);
        Assert.Contains("worked out from the back squat", plan.Notes);
    }

    [Fact]
    public void OwnTest_GoesBeforeTheBasis()
    {
        var plan = LoadPlan.Of(Made.Player(Squat, Made.Tested("front_squat", 160)), Made.Item(FrontSquat, Made.Sets(1, 5, 75)), Made.Kilograms, PlanRules.Standard, Made.Today);
        Assert.Equal([120], Kilograms(plan));
        Assert.Empty(plan.Notes);
    }

    [Theory]
    [InlineData(43)]
    [InlineData(183)]
    public void OwnTestOldOrTooOld_GivesWayToAFreshBasis(int days)
    {
        var old = Made.Tested("front_squat", 160) with { Date = Made.Today.AddDays(-days) };
        var plan = LoadPlan.Of(Made.Player(Squat, old), Made.Item(FrontSquat, Made.Sets(1, 5, 75)), Made.Kilograms, PlanRules.Standard, Made.Today);
        Assert.Equal([127.5], Kilograms(plan));
        Assert.Contains("worked out from the back squat", plan.Notes);
    }

    // Both are old: the own test, by its lower side, 152: 75 % = 114. So it is where the basis is doubtful.
    [Fact]
    public void OwnTestOld_BasisNoBetter_StaysTheBase()
    {
        var own = Made.Tested("front_squat", 160) with { Date = Made.Today.AddDays(-50) };
        foreach (var basis in new[] { Squat with { Date = Made.Today.AddDays(-43) }, Squat with { Doubt = "one set" } })
            Assert.Equal([112.5], Kilograms(LoadPlan.Of(Made.Player(basis, own), Made.Item(FrontSquat, Made.Sets(1, 5, 75)), Made.Kilograms, PlanRules.Standard, Made.Today)));
    }

    // Lower side of 200 is 190: 75 % = 142.5.
    [Theory]
    [InlineData(42, 150, null)]
    [InlineData(43, 142.5, "lower side of the range: 6 weeks old")]
    [InlineData(56, 142.5, "lower side of the range: 8 weeks old")]
    [InlineData(182, 142.5, "lower side of the range: 26 weeks old")]
    public void Age_BeyondSixWeeks_TakesTheLowerSide(int days, double expected, string? note)
    {
        var plan = Of(Made.Squat, Made.Sets(1, 5, 75), Made.Tested("back_squat", 200) with { Date = Made.Today.AddDays(-days) });
        Assert.Equal([expected], Kilograms(plan));
        Assert.Equal(note, plan.Notes.SingleOrDefault());
        Assert.Equal(note is not null, plan.IsLowerSide);
    }

    [Fact]
    public void Age_OfTheSeasonsRules_Counts()
    {
        var rules = PlanRules.With([PlanRules.Standard[RuleIds.TestOldAfter] with { Value = 5 }]);
        Assert.True(LoadPlan.Of(Made.Player(Squat), Made.Item(Made.Squat, Made.Sets(1, 5, 75)), Made.Kilograms, rules, Made.Today).IsLowerSide);
    }

    [Fact]
    public void AgeRule_OnlyFlagged_KeepsTheEstimateAndSaysSo()
    {
        var rules = PlanRules.With([PlanRules.Standard[RuleIds.TestOldAfter] with { Handling = RuleHandling.Flag }, PlanRules.Standard[RuleIds.TestExpiresAfter] with { Handling = RuleHandling.Flag }]);
        var old = Made.Tested("back_squat", 200) with { Date = Made.Today.AddDays(-210) };
        var plan = LoadPlan.Of(Made.Player(old), Made.Item(Made.Squat, Made.Sets(1, 5, 75)), Made.Kilograms, rules, Made.Today);
        Assert.Equal([150], Kilograms(plan));
        Assert.Equal("the test is 30 weeks old", Assert.Single(plan.Notes));
    }

    [Fact]
    public void NoTestToday_SaysTestFirst()
    {
        Assert.Equal("test first: back squat never tested", Of(Made.Squat, Made.Sets(1, 5, 75)).Instead);
        Assert.Equal("test first: back squat last tested 26 weeks ago", Of(Made.Squat, Made.Sets(1, 5, 75), Squat with { Date = Made.Today.AddDays(-183) }).Instead);
        Assert.Equal("test first: hurt since the back squat test", Of(FrontSquat, Made.Sets(1, 5, 75), Squat with { HurtSince = Made.Today.AddDays(-1) }).Instead);
        Assert.Empty(Of(Made.Squat, Made.Sets(1, 5, 75)).Working);
    }

    [Fact]
    public void UnknownError_TakesATenthOff()
        => Assert.Equal([135], Kilograms(Of(Made.Squat, Made.Sets(1, 5, 75), Made.Tested("back_squat", 200) with { Range = null })));

    [Fact]
    public void Doubtful_IsHeldAtWhatWasLifted()
    {
        // 102 for 15: lower side 140, 85 % = 119, held at 102, of which 100 can be put on.
        var test = new KnownMaximum("back_squat", 153, new Interval(140, 166), Made.Today, "estimated from 15 repetitions", "more than 10 repetitions", 102, null);
        var plan = Of(Made.Squat, Made.Sets(1, 3, 85), test);
        Assert.Equal([100], Kilograms(plan));
        Assert.Contains("held at what was lifted in a test", plan.Notes);
        Assert.Contains("lower side of the range: more than 10 repetitions", plan.Notes);
        Assert.False(plan.IsAboveTested);
        // Of a front squat at 85 % of the back squat 86.7 was shown: 85 % of 119 = 101 is held there.
        Assert.Equal([85], Kilograms(Of(FrontSquat, Made.Sets(1, 3, 85), test)));
        // Of a lift at 110 % not more than the 102 themselves.
        Assert.Equal([100], Kilograms(Of(FrontSquat with { OwnMaximumPercent = 110 }, Made.Sets(1, 3, 85), test)));
    }

    [Fact]
    public void AboveTested_IsSaid()
    {
        // 100 for 10: 1RM 133.34; 85 % = 113.3.
        var test = Made.Tested("back_squat", 133.34) with { HeaviestKilograms = 100 };
        var plan = Of(Made.Squat, Made.Sets(1, 3, 85), test);
        Assert.Equal([112.5], Kilograms(plan));
        Assert.True(plan.IsAboveTested);
        Assert.Contains("above any load tested: only with the coach", plan.Notes);
        Assert.False(Of(Made.Squat, Made.Sets(1, 5, 75), test).IsAboveTested); // 100.0
    }

    [Fact]
    public void BarHeavierThanWanted_IsSaid()
    {
        // 75 % of 24 = 18, the bar has 20.
        var plan = Of(Made.Squat, Made.Sets(1, 5, 75), Made.Tested("back_squat", 24));
        Assert.Empty(plan.Working);
        Assert.Equal("bar too heavy: 20 kg is the least there is, more than the per cent; take a lighter weight or another exercise", plan.Instead);
    }

    [Fact]
    public void Ramp_FromBelowTheBar_StartsWithTheBar()
    {
        // 50, 75, 100 % of 32: 16, 24, 32.
        var plan = Of(Made.Squat, Made.Ramp(3, 3, 50, 100), Made.Tested("back_squat", 32));
        Assert.Equal([20, 22.5, 30], Kilograms(plan));
        Assert.Empty(plan.WarmUp);
        Assert.Contains("the first sets with the empty bar (20 kg): it is more than their per cent", plan.Notes);
    }

    [Fact]
    public void NotEnoughPlates_IsSaid()
    {
        var few = Made.Kilograms with { Plates = [new(Mass.FromKilograms(20), 2)] };
        var plan = Of(Made.Squat, Made.Sets(1, 5, 75), Squat, few);
        Assert.Equal([100], Kilograms(plan));
        // The same words for everybody: a sheet explains a mark once.
        Assert.Contains("all there is, 100 kg: the per cent ask for more", plan.Notes);
    }

    [Fact]
    public void NoBar_GivesTheFigureWithoutALoad()
        => Assert.Equal("no bar is listed among the weights; 75 % of the 1RM is 150.75 kg", Of(Made.Squat, Made.Sets(1, 5, 75), Squat, new() { Unit = "kg" }).Instead);

    // 45 % of a bench press of 120 is 54 in one hand; 70 % = 37.8, of 10, 20, 30, 40 the 30.
    [Fact]
    public void Dumbbells_AreTheLoadOfOneHand()
    {
        var press = Made.Lift("dumbbell_press", MovementPattern.Push, TrainedQuality.MaximalStrength, "bench_press", 45) with { Implement = "dumbbell" };
        var plan = Of(press, Made.Sets(3, 8, 70), Made.Tested("bench_press", 120));
        Assert.Equal([30, 30, 30], Kilograms(plan));
        Assert.Contains("load of one hand", plan.Notes);
        Assert.Empty(plan.WarmUp);
    }

    [Fact]
    public void AddedWeightOnBodyWeight_GivesNoPerCent()
    {
        var pullUp = Made.Lift("pull_up", MovementPattern.Pull, TrainedQuality.MaximalStrength);
        Assert.StartsWith("small steps by feel", Of(pullUp, Made.Sets(3, 5, 75), Made.Tested("pull_up", 40)).Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void SchemeWithoutPerCent_TakesTheMiddleOfTheUse_ElseTheCoach()
    {
        // Middle of 20 and 40 % of 201: 60.3.
        Assert.Equal([60], Kilograms(Of(Made.Squat with { LeastPercent = 20, MostPercent = 40 }, Made.Sets(1, 3), Squat)));
        Assert.Equal("the coach chooses: the scheme names no load", Of(Made.Squat, Made.Sets(1, 3), Squat).Instead);
    }

    // 5 % of 90 kg is 4.5: of 3, 4, 6 the 4.
    [Fact]
    public void BodyMass_NearestNotAboveTheMiddle()
    {
        Assert.Equal([4, 4], Kilograms(Of(Made.Throw, Made.Sets(2, 6))));
        Assert.Equal("weigh first: no body mass known", LoadPlan.Of(Made.Player() with { BodyMass = null }, Made.Item(Made.Throw, Made.Sets(2, 6)), Made.Kilograms, PlanRules.Standard, Made.Today).Instead);
        Assert.Equal("lightest medicine ball too heavy: 3 kg is the least there is, more than the per cent; take a lighter weight or another exercise", Of(Made.Throw with { LeastPercent = 1, MostPercent = 1 }, Made.Sets(2, 6)).Instead);
        Assert.Equal("no sled is listed among the weights; 5 % of body mass is 4.5 kg", Of(Made.Throw with { Implement = "sled" }, Made.Sets(2, 6)).Instead);
    }

    [Theory]
    [InlineData(5.0, 90, 45)] // middle of 30 and 60 cm
    [InlineData(1.0, 90, 30)] // no experience
    [InlineData(null, 90, 30)]
    [InlineData(5.0, 110, 30)] // heavy
    public void Height_MiddleForTheExperienced_LowestElse(double? years, double mass, double expected)
    {
        var player = Made.Player() with { TrainingYears = years, BodyMass = Mass.FromKilograms(mass) };
        var plan = LoadPlan.Of(player, Made.Item(Made.Jump, Made.Sets(4, 5)), Made.Kilograms, PlanRules.Standard, Made.Today);
        Assert.Equal(expected, plan.Height!.Value.Centimetres, 9);
        Assert.Empty(plan.Working);
        Assert.Null(plan.Instead);
    }

    [Fact]
    public void Contrast_HasTheHeightOfItsJump()
    {
        var pair = Made.Sets(3, 2, 85) with { Kind = SchemeKind.Contrast, PartnerRepetitions = 4 };
        var plan = LoadPlan.Of(Made.Player(Squat), Made.Item(Made.Squat, pair, Made.Jump), Made.Kilograms, PlanRules.Standard, Made.Today);
        Assert.Equal([170, 170, 170], Kilograms(plan));
        Assert.Equal(45, plan.Height!.Value.Centimetres, 9);
    }

    [Fact]
    public void NoBasis_NeedsNothing() => Assert.Equivalent(new Prescription(), Of(Made.Sprint, Made.Sets(6, 1)), strict: true);

    private static Exercise FrontSquat => Made.Lift("front_squat", MovementPattern.Squat, TrainedQuality.MaximalStrength, "back_squat", 85);

    private static Prescription Of(Exercise exercise, SetScheme scheme, KnownMaximum? known = null, WeightStock? stock = null)
        => LoadPlan.Of(known is null ? Made.Player() : Made.Player(known), Made.Item(exercise, scheme), stock ?? Made.Kilograms, PlanRules.Standard, Made.Today);

    private static IEnumerable<double> Kilograms(Prescription plan) => plan.Working.Select(m => m.Kilograms);
}
