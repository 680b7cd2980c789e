using Analytics.Planning.Exercises;
using Analytics.Planning.Feedback;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using static Analytics.Planning.Tests.Feedback.Log;

namespace Analytics.Planning.Tests.Feedback;

/// <summary>From the log to the loads on the bar. Expected loads by hand, with plates for every 2.5 kg.</summary>
public class LoggedBasesTests
{
    private const double Maximum = 135;
    private static readonly SetScheme s_fives = Made.Sets(5, 5, 75) with { Id = "fives" };
    private static readonly SetScheme s_doubles = Made.Sets(5, 2, 90) with { Id = "doubles" };

    // Tested before the first of the planned sessions. 75 % of 135 kg is 101.25: 100 on the bar.
    private static readonly KnownMaximum s_squat = Made.Tested("back_squat", Maximum) with { Date = Day(2) };

    [Fact]
    public void Progress_FromTheTest_TakesTheNextWeight()
    {
        // 101.25 × 1.025 = 103.8: 102.5 on the bar. Doubles at 90 %: 135 × 1.025 × 0.9 = 124.5 instead of 121.5, 122.5 instead of 120.
        var (player, move) = Next([Did(16, 7, "a", (5, 5, 100)), Did(23, 7, "a", (5, 5, 100))]);
        Assert.Equal("a step up by the log", move.Text);
        Assert.Equal(102.5, Top(player, s_fives));
        Assert.Equal(122.5, Top(player, s_doubles));
        Assert.Equal(["a step up by the log"], Load(player, s_fives).Notes);
    }

    [Fact]
    public void BackOff_TakesFivePerCentOff()
    {
        // 101.25 × 0.95 = 96.2: 95.
        var (player, move) = Next([Short(16), Short(23)]);
        Assert.Equal(("a step down by the log", 95), (move.Text, Top(player, s_fives)));
    }

    // The plan of the week after stood a step above the test already; held, it stays there, and a step is taken from there and not from the test.
    [Theory]
    [InlineData(9, 105, "kept where the log has it")]
    [InlineData(7, 107.5, "a step up by the log")]
    public void PlannedAboveTheTest_GoesOnFromThere(double rating, double kilograms, string text)
    {
        var (player, move) = Next([Did(16, 7, "a", (5, 5, 105)), Did(23, rating, "a", (5, 5, 105))], planned: 105);
        Assert.Equal((text, kilograms), (move.Text, Top(player, s_fives)));
    }

    [Fact]
    public void Hold_WhereTheTestStillGivesTheLoad_LeavesItToTheTest()
    {
        var (player, move) = Next([Did(16, 7, "a", (5, 5, 100))]);
        Assert.Null(move.Base);
        Assert.Equal(("as the tests say", 100), (move.Text, Top(player, s_fives)));
        Assert.Empty(Load(player, s_fives).Notes);
    }

    // 5 × 5 with 110 kg planned, of which nothing was done: no evidence for more than the test says. One reading takes nothing off either.
    [Fact]
    public void NotDone_IsNoEvidenceForMoreThanTheTest()
    {
        var (player, _) = Next([Did(23, 7, "a", (2, 5, 110))], planned: 110);
        Assert.Equal(100, Top(player, s_fives));
    }

    [Fact]
    public void TestedSince_TheTestSpeaks()
    {
        var (player, move) = Next([Did(16, 7, "a", (5, 5, 100)), Did(23, 7, "a", (5, 5, 100))], test: s_squat with { Date = Day(24) });
        Assert.Equal((null, "tested since, on 24 March: the test speaks"), (move.Base, move.Text));
        Assert.Equal(100, Top(player, s_fives));
    }

    // Logged or not: what was never tested, or not since an injury, waits for a test.
    [Fact]
    public void NoTestThatSpeaks_StaysTestFirst()
    {
        var logged = new[] { Did(16, 7, "a", (5, 5, 100)), Did(23, 7, "a", (5, 5, 100)) };
        Assert.Equal("test first: hurt since the back squat test", Next(logged, test: s_squat with { HurtSince = Day(10) }).Move.Text);
        var player = Moved(Made.Player() with { Id = "a" }, logged, 100, s_fives.Id, Made.Kilograms).Player;
        Assert.Equal("test first: back squat never tested", Load(player, s_fives).Instead);
    }

    // The test has become old since: without the log the lower side of its range would be taken, 128.25, and 95 kg put on.
    [Fact]
    public void DoneSinceTheTestBecameOld_KeepsTheLoad()
    {
        var old = s_squat with { Date = Today.AddDays(-50) };
        Assert.Equal(95, Load(Made.Player(old), s_fives).Working[0].Kilograms);
        var (player, move) = Next([Did(23, 7, "a", (5, 5, 100))], test: old);
        Assert.Equal(("kept where the log has it", 100), (move.Text, Top(player, s_fives)));
        Assert.False(Load(player, s_fives).IsLowerSide);
    }

    // On a doubtful estimate nothing goes above what was lifted, whatever the log says; above what was tested it is said.
    [Fact]
    public void RulesAboutTests_StayInForce()
    {
        var logged = new[] { Did(16, 7, "a", (5, 5, 100)), Did(23, 7, "a", (5, 5, 100)) };
        var held = Load(Next(logged, test: s_squat with { Doubt = "one set", HeaviestKilograms = 100, Range = new(134, 136) }).Player, s_fives);
        Assert.Equal((100, "held at what was lifted in a test"), (held.Working[0].Kilograms, held.Notes[1]));
        var above = Load(Next(logged, test: s_squat with { HeaviestKilograms = 100 }).Player, s_fives);
        Assert.True(above.IsAboveTested);
        Assert.Equal((102.5, "above any load tested: only with the coach"), (above.Working[0].Kilograms, above.Notes[1]));
    }

    // 40, 50 kg and nothing between: a step of 2.5 % is far from the next weight. With 42.5 kg the next weight is 6.25 % up, within three steps.
    [Theory]
    [InlineData(50, 40, "the next weight, 50 kg, is 25 % up: repetitions first, then the load")]
    [InlineData(42.5, 42.5, "a step up by the log")]
    [InlineData(40, 40, "no heavier weight is listed")]
    public void Progress_CoarseWeights_TakeTheNextOnlyWhenNear(double heavier, double kilograms, string text)
    {
        var stock = new WeightStock { Unit = "kg", Bar = Quantities.Mass.FromKilograms(40), Plates = heavier > 40 ? [new(Quantities.Mass.FromKilograms((heavier - 40) / 2), 1)] : [] };
        if (heavier == 40) stock = stock with { Plates = [new(Quantities.Mass.FromKilograms(1), 0)] };
        var light = Made.Tested("back_squat", 54) with { Date = Day(2) };
        var (player, move) = Moved(Made.Player(light) with { Id = "a" }, [Did(16, 7, "a", (5, 5, 40)), Did(23, 7, "a", (5, 5, 40))], 40, s_fives.Id, stock);
        Assert.Equal((text, kilograms), (move.Text, Load(player, s_fives, stock).Working[0].Kilograms));
    }

    // A row of the coach's own without a scheme does not tell what per cent its load was: the step is then on the test.
    [Fact]
    public void NoScheme_StepIsOnTheTest()
    {
        var player = Moved(Made.Player(s_squat) with { Id = "a" }, [Did(16, 7, "a", (5, 5, 60)), Did(23, 7, "a", (5, 5, 60))], 60, scheme: null, Made.Kilograms).Player;
        Assert.Equal(102.5, Top(player, s_fives));
    }

    // Week after week all is done: every week one step, never two and never none. 102.5, 105, 107.5, ...
    [Fact]
    public void EveryWeekDone_GoesUpOneStepAWeek()
    {
        List<EarlierChoice> plan = [Plan(2, kilograms: 100, scheme: s_fives.Id)];
        List<LoggedSession> log = [Did(2, 7, "a", (5, 5, 100))];
        List<double> loads = [];
        for (var day = 9; day <= 30; day += 7)
        {
            var player = Made.Player(s_squat with { Date = Day(1) }) with { Id = "a" };
            var said = new LoadFeedback(PlanRules.Standard, [s_fives]).Of(PlanReadings.Of(plan, log, Groups), Day(day));
            var load = Top(LoggedBases.Moved(player, Bases(Made.Kilograms).Of(player, said, Day(day))), s_fives);
            loads.Add(load);
            plan.Add(Plan(day, kilograms: load, scheme: s_fives.Id));
            log.Add(Did(day, 7, "a", (5, 5, load)));
        }

        Assert.Equal([100, 102.5, 105, 107.5], loads);
    }

    private static (PlanPlayer Player, LoggedMove Move) Next(LoggedSession[] log, double planned = 100, KnownMaximum? test = null)
        => Moved(Made.Player(test ?? s_squat) with { Id = "a" }, log, planned, s_fives.Id, Made.Kilograms);

    private static (PlanPlayer Player, LoggedMove Move) Moved(PlanPlayer player, LoggedSession[] log, double planned, string? scheme, WeightStock stock)
    {
        var said = new LoadFeedback(PlanRules.Standard, [s_fives]).Of(PlanReadings.Of([Plan(16, kilograms: planned, scheme: scheme), Plan(23, kilograms: planned, scheme: scheme)], log, Groups), Today);
        var move = Assert.Single(Bases(stock).Of(player, said, Today));
        return (LoggedBases.Moved(player, [move]), move);
    }

    private static LoggedBases Bases(WeightStock stock) => new(new ExerciseCatalogue([Made.Squat]), [s_fives, s_doubles], stock, PlanRules.Standard);

    private static Prescription Load(PlanPlayer player, SetScheme scheme, WeightStock? stock = null) => LoadPlan.Of(player, Made.Item(Made.Squat, scheme), stock ?? Made.Kilograms, PlanRules.Standard, Today);

    private static double Top(PlanPlayer player, SetScheme scheme) => Load(player, scheme).Working.Max(w => w.Kilograms);
}
