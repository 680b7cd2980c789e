using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Planning.Solving;

namespace Analytics.Planning.Tests.Solving;

/// <summary>A thousand weeks drawn at random, in two classes that run side by side: no plan breaks a rule that refuses, and where there is none the clash is minimal.</summary>
public class RandomWeekTests
{
    public static TheoryData<int> Blocks => [.. Enumerable.Range(0, RandomWeekCheck.Blocks / 2)];

    [Theory]
    [MemberData(nameof(Blocks))]
    public void Plan_AnyWeek_KeepsEveryRuleOrNamesAMinimalClash(int block) => RandomWeekCheck.Of(block);
}

/// <summary>The other half of the thousand weeks.</summary>
public class MoreRandomWeekTests
{
    public static TheoryData<int> Blocks => [.. Enumerable.Range(RandomWeekCheck.Blocks / 2, RandomWeekCheck.Blocks / 2)];

    [Theory]
    [MemberData(nameof(Blocks))]
    public void Plan_AnyWeek_KeepsEveryRuleOrNamesAMinimalClash(int block) => RandomWeekCheck.Of(block);
}

/// <summary>What must hold of drawn weeks.</summary>
internal static class RandomWeekCheck
{
    /// <summary>Blocks of weeks.</summary>
    public const int Blocks = 1000 / PerTest;

    private const int PerTest = 50;

    // Rules must hold of any plan, so a plan that is not nearly the best will do.
    private static readonly PlanOptions Quick = new(Effort: 1) { GoodEnough = 0.05 };

    public static void Of(int block)
    {
        int plans = 0, clashes = 0;
        for (var seed = block * PerTest; seed < (block + 1) * PerTest; seed++)
        {
            var problem = RandomWeek.Draw(seed);
            var answer = WeekPlanner.Plan(problem, Quick);
            Assert.Null(answer.Undecided);
            if (answer.Plan is { } plan)
            {
                plans++;
                Assert.All(PlanCheck.Of(problem, plan.Sessions), f => Assert.False(problem.Rules.Refuses(f.RuleId), $"seed {seed}: {f}"));
                Recompute(seed, problem, plan);
                DrawnLoads.CanBePutOn(seed, problem, plan);
                Assert.All(problem.Players.SelectMany(p => DoseSheet.Of(p, plan, problem.Rules).NotKept), l => Assert.False(problem.Rules.Refuses(l.RuleId!), $"seed {seed}: {l}"));
                Assert.True(plan.Quality.Gap >= 0, $"seed {seed}: {plan.Quality}");
                if (seed % 10 == 0) SamePlan(seed, plan, WeekPlanner.Plan(RandomWeek.Draw(seed), Quick).Plan!);
            }
            else
            {
                clashes++;
                IsMinimal(seed, problem, answer);
            }
        }

        // Both happen, so neither half of the test is empty.
        Assert.True(plans > 5 && clashes > 0, $"block {block}: {plans} plans, {clashes} clashes");
    }

    // Times and contacts from the definitions again, and the shape of a plan.
    private static void Recompute(int seed, PlanProblem problem, WeekPlan plan)
    {
        foreach (var session in plan.Sessions)
        {
            var change = problem.Rules.Value(RuleIds.ChangeMinutes);
            var minutes = problem.Rules.Value(RuleIds.WarmUpMinutes) + session.Shared.Sum(i => Minutes(i) + change)
                + (session.Own.Count == 0 ? 0 : change + session.Own.Max(o => Minutes(o.Item)));
            // The planner counts whole seconds up, half a second an exercise on average.
            Assert.True(Math.Abs(minutes - session.Minutes) < 0.1, $"seed {seed}: {minutes} or {session.Minutes} minutes");
            if (problem.Rules.Refuses(RuleIds.SessionMinutes)) Assert.True(minutes <= session.Slot.Minutes + 1e-6, $"seed {seed}: {minutes} minutes");
            foreach (var player in session.Players)
            {
                Assert.Equal(session.Own.Count == 0 ? 0 : 1, session.Own.Count(o => o.ForNeed.Contains(player) || o.ByDefault.Contains(player)));
                var items = session.For(player);
                Assert.Equal(items.Count, items.Select(i => i.Exercise.Id).Distinct().Count());
                Assert.All(items, i => Assert.Equal(Contacts(i), i.Contacts));
            }
        }

        Assert.Equal(problem.Sessions.Sum(s => problem.Players.Count(p => s.Has(p.Group))), plan.Sessions.Sum(s => s.Players.Count));
    }

    private static double Minutes(PlannedItem item)
    {
        double Repetition(Exercise e) => e.RepetitionTime.Seconds * (e.IsUnilateral ? 2 : 1);
        var (e, s) = (item.Exercise, item.Scheme);
        var set = s.Repetitions * Repetition(e);
        if (s.Kind == SchemeKind.Contrast) set += s.InnerRest.Seconds + s.PartnerRepetitions * Repetition(item.Partner!);
        var between = s.Kind == SchemeKind.OnTheMinute ? Math.Max(s.Interval.Seconds - set, 0) : s.Rest.Seconds;
        // Warm-up: 5 and 3 repetitions, and one more from 80 %, a minute after each.
        var (sets, repetitions) = e.Basis.Kind != LoadBasisKind.Lift || e.Implement != "barbell" ? (0, 0) : s.MostPercent >= 80 ? (3, 9) : (2, 8);
        return (sets * 60 + repetitions * Repetition(e) + s.Sets * set + (s.Sets - 1) * between) / 60;
    }

    private static int Contacts(PlannedItem item)
    {
        var contacts = item.Scheme.Sets * item.Scheme.Repetitions * item.Exercise.JumpContacts * (item.Exercise.IsUnilateral ? 2 : 1);
        return item.Partner is null ? contacts : contacts + item.Scheme.Sets * item.Scheme.PartnerRepetitions * item.Partner.JumpContacts;
    }

    private static void SamePlan(int seed, WeekPlan first, WeekPlan second)
    {
        static IEnumerable<string> Lines(WeekPlan plan) => plan.Sessions.SelectMany(s => s.Shared.Select(i => $"{s.Slot.Date:O} {s.Group} {i.Exercise.Id} {i.Scheme.Id}")
            .Concat(s.Own.Select(o => $"{s.Slot.Date:O} {s.Group} {o.Item.Exercise.Id} {string.Join('+', o.ForNeed)} {string.Join('+', o.ByDefault)}")));
        Assert.True(Lines(first).SequenceEqual(Lines(second)), $"seed {seed}: two plans of the same week differ");
    }

    private static void IsMinimal(int seed, PlanProblem problem, PlanAnswer answer)
    {
        Assert.NotEmpty(answer.Clashes);
        var week = WeekModel.Of(problem, TrainingUnit.Of(problem), explain: true);
        foreach (var clash in answer.Clashes)
        {
            Assert.NotEmpty(clash.Rules);
            Assert.False(ClashFinder.CanKeep(week, clash.Rules, Quick), $"seed {seed}: the rules named can all be kept");
            Assert.All(clash.Rules, r => Assert.True(ClashFinder.CanKeep(week, [.. clash.Rules.Where(o => o != r)], Quick), $"seed {seed}: clash without {r}"));
        }

        // Taking a rule away gives a plan, or there is another clash to be read that does without it.
        foreach (var relaxation in answer.Clashes.SelectMany(c => c.Relaxations))
            Assert.True(relaxation.GivesPlan || answer.Clashes.Count == ClashFinder.Most || answer.Clashes.Any(c => !c.Rules.Contains(relaxation.Rule)), $"seed {seed}: {relaxation}");
        if (answer.Clashes.Count == 1) Assert.All(answer.Clashes[0].Relaxations, r => Assert.True(r.GivesPlan, $"seed {seed}: {r}"));
    }
}
