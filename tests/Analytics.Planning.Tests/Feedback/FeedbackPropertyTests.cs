using Analytics.Planning.Feedback;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using static Analytics.Planning.Tests.Feedback.Log;

namespace Analytics.Planning.Tests.Feedback;

/// <summary>What holds for every history; 500 invented ones from a fixed seed.</summary>
public class FeedbackPropertyTests
{
    private static readonly string[] s_players = ["a", "b", "c"];

    private static (List<EarlierChoice> Plan, List<LoggedSession> Log) History(Random random)
    {
        List<EarlierChoice> plan = [];
        List<LoggedSession> log = [];
        foreach (var player in s_players)
        {
            for (var day = 3; day < 29; day += random.Next(2, 7))
            {
                plan.Add(Plan(day, athlete: player));
                if (random.Next(4) == 0) continue;
                double? rating = random.Next(3) == 0 ? null : random.Next(4, 11);
                log.Add(Did(day, rating, player, (random.Next(3, 6), random.Next(4, 6), 97.5 + 2.5 * random.Next(3))));
            }
        }

        return (plan, log);
    }

    private static string Said(IEnumerable<EarlierChoice> plan, IEnumerable<LoggedSession> log)
        => string.Join("\n", new LoadFeedback(PlanRules.Standard, []).Of(PlanReadings.Of(plan, log, Groups), Today).Select(f => f.ToString()));

    [Fact]
    public void Of_AnyOrderOfRows_SaysTheSame()
    {
        for (var seed = 0; seed < 500; seed++)
        {
            var random = new Random(seed);
            var (plan, log) = History(random);
            var (plan2, log2) = (plan.ToArray(), log.ToArray());
            random.Shuffle(plan2);
            random.Shuffle(log2);
            Assert.Equal(Said(plan, log), Said(plan2, log2));
        }
    }

    // A reading moves a load only together with one before it that says the same: put behind a history whose latest reading does not point its way, or behind
    // none at all, it leaves or makes a hold.
    [Fact]
    public void Of_OneMoreReadingAlone_NeverMovesALoad()
    {
        var tried = 0;
        for (var seed = 0; seed < 500; seed++)
        {
            var random = new Random(seed);
            var (plan, log) = History(random);
            plan.RemoveAll(p => p.AthleteId != "a");
            log.RemoveAll(l => l.AthleteId != "a");
            plan.RemoveAll(p => p.Date.Day > 26);
            log.RemoveAll(l => l.Work.Date.Day > 26);
            var good = random.Next(2) == 0;
            LoggedSession added = good ? All(28, 6) : Short(28, 10);
            var last = log.OrderBy(l => l.Work.Date).LastOrDefault();
            var lastWasDone = last is not null && last.Work.Exercises[0] is { Sets: >= 5, Repetitions: >= 5, Load.Kilograms: >= 99.5 };
            var lastPointsThere = last is not null && (good ? lastWasDone && last.Work.Rating is null or <= 8 : !lastWasDone);
            if (lastPointsThere) continue;
            Assert.Equal(LoadStep.Hold, Of([.. plan, Plan(28)], [.. log, added]).Step);
            tried++;
        }

        Assert.InRange(tried, 50, 500);
        Assert.Equal(LoadStep.Hold, Of([Plan(28)], [All(28, 1)]).Step);
        Assert.Equal(LoadStep.Hold, Of([Plan(28)], [Short(28, 10)]).Step);
    }
}
