using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Solving;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Tests.Solving;

/// <summary>Sessions so small that every choice can be tried: the planner finds a plan exactly where one of them keeps all rules.</summary>
public class TinyWeekTests
{
    [Fact]
    public void Plan_EveryChoiceTried_AgreesOnWhetherThereIsOne()
    {
        int with = 0, without = 0;
        for (var seed = 0; seed < 150; seed++)
        {
            var problem = Draw(seed);
            var answer = WeekPlanner.Plan(problem);
            var possible = Tries(problem).Any(s => PlanCheck.Of(problem, [s]).Count == 0);
            Assert.True(possible == answer.Plan is not null, $"seed {seed}: tried {possible}, planned {answer.Plan is not null}");
            if (possible) with++;
            else without++;
        }

        // Both are frequent among the draws: at least a fifth each.
        Assert.InRange(with, 30, 120);
        Assert.InRange(without, 30, 120);
    }

    private static PlanProblem Draw(int seed)
    {
        var random = new Random(seed);
        var kind = SampleTraining.Kinds[random.Next(SampleTraining.Kinds.Count)];
        kind = kind with { Demands = [.. kind.Demands.Select(d => d with { IsOwnWork = false, Least = Math.Min(d.Most, d.Least + random.Next(4) / 3) })] };
        var exercises = SampleTraining.Exercises.All.Where(e => kind.Of(e) is not null).OrderBy(_ => random.Next()).Take(7);
        return SampleSquad.Problem(SampleSquad.Players(random.Next(1, 8), 1), SampleSquad.Slot(random.Next(7), kind.Id, random.Next(25, 75))) with
        {
            Exercises = new(exercises),
            Schemes = [.. SampleTraining.Schemes.Where(s => s.Kind != Schemes.SchemeKind.Contrast && random.Next(4) > 0)],
            Kinds = [kind],
            Rooms = [SampleTraining.Room with { Stations = SampleTraining.Room.Stations.Where(_ => random.Next(5) > 0).ToDictionary(s => s.Key, _ => random.Next(1, 5)) }],
            Games = [new Game(SampleSquad.Monday.AddDays(3))],
            Rules = PlanRules.With([PlanRules.Standard[RuleIds.JumpContacts] with { Value = random.Next(15, 100) }, PlanRules.Standard[RuleIds.PatternTimes] with { Value = random.Next(1, 3) }]),
        };
    }

    private static IEnumerable<UnitSession> Tries(PlanProblem problem)
    {
        var slot = problem.Sessions[0];
        var byExercise = Candidates.All(problem).GroupBy(c => c.Exercise.Id).Select(g => g.Where(c => problem.Kinds[0].Of(c.Exercise)!.Takes(c.Scheme.MostPercent)).ToList()).ToList();
        return Sets(byExercise, 0).Select(chosen =>
        {
            List<PlannedItem> items = [.. chosen.Select(c => c.Item(false)).OrderBy(i => i.Exercise.Quality.PartOfSession())];
            return new UnitSession
            {
                Slot = slot, Kind = problem.Kinds[0], Group = problem.Players[0].Group, Players = [.. problem.Players.Select(p => p.Id)], Shared = items, Own = [],
                Minutes = SessionTime.Of(items, problem.Rules).Minutes,
            };
        });
    }

    private static IEnumerable<List<Candidate>> Sets(List<List<Candidate>> byExercise, int from)
    {
        if (from == byExercise.Count) return [[]];
        return Sets(byExercise, from + 1).SelectMany(rest => byExercise[from].Select(c => new List<Candidate>([c, .. rest])).Prepend(rest));
    }
}
