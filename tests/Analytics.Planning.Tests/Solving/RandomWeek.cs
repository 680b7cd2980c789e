using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Planning.Weeks;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Planning.Tests.Solving;

/// <summary>Squads, calendars, rooms and catalogues drawn at random, some of them without any plan.</summary>
internal static class RandomWeek
{
    private static readonly string[] s_kinds = ["max_strength", "power", "speed", "reactive", "recovery"];

    public static PlanProblem Draw(int seed)
    {
        var random = new Random(seed);
        var groups = random.Next(1, 4);
        var players = Enumerable.Range(0, random.Next(groups, 13)).Select(i => Player(random, i, i < groups ? i : random.Next(groups))).OrderBy(p => p.Group, StringComparer.Ordinal).ToList();
        var days = Enumerable.Range(0, 7).OrderBy(_ => random.Next()).Take(random.Next(1, 5)).Order().ToList();
        var timed = random.Next(2) == 0;
        return new()
        {
            Monday = SampleSquad.Monday,
            Sessions = [.. days.Select(d => Slot(random, d, timed))],
            Games = random.Next(3) == 0 ? [new Game(SampleSquad.Monday.AddDays(random.Next(-1, 9)), timed && random.Next(2) == 0 ? new TimeOnly(13, 0) : null)] : [],
            Players = players,
            // Each draw knows other exercises; one in ten knows few.
            Exercises = new(SampleTraining.Exercises.All.Where(_ => random.NextDouble() < (seed % 10 == 0 ? 0.5 : 0.85))),
            Schemes = [.. SampleTraining.Schemes.Where(_ => random.NextDouble() < 0.95)],
            Kinds = SampleTraining.Kinds,
            Rooms = [Room(random)],
            Rules = Rules(random),
            Earlier = [.. Enumerable.Range(0, random.Next(3)).Select(_ => Earlier(random, players, days))],
        };
    }

    private static PlanPlayer Player(Random random, int i, int group) => new()
    {
        Id = $"P{i:00}",
        Name = $"Player {i}",
        Group = $"Group {group}",
        BodyMass = random.Next(10) == 0 ? null : Mass.FromKilograms(75 + 70 * random.NextDouble()),
        TrainingYears = random.Next(8) == 0 ? null : random.Next(0, 9) / 2.0,
        Maxima = new[] { ("back_squat", 120.0), ("bench_press", 90), ("power_clean", 70) }.Where(_ => random.Next(6) > 0)
            .Select(l => (l.Item1, Kilograms: l.Item2 * (1 + random.NextDouble())))
            .ToDictionary(l => l.Item1, l => new KnownMaximum(l.Item1, l.Kilograms, new Interval(l.Kilograms * 0.9, l.Kilograms * 1.1), SampleSquad.Monday.AddDays(-random.Next(250)), "measured", null, l.Kilograms, null)),
        Needs = [.. TrainedQualities.All.Where(_ => random.Next(7) == 0).Select(q => new QualityNeed(q, 0.8 + 0.2 * random.NextDouble(), "drawn", true))],
        Restrictions = random.Next(9) > 0 ? [] : [Restriction(random, $"P{i:00}")],
    };

    private static Restriction Restriction(Random random, string id)
    {
        var bare = new Restriction { AthleteId = id, From = SampleSquad.Monday.AddDays(random.Next(-20, 4)), To = random.Next(2) == 0 ? null : SampleSquad.Monday.AddDays(random.Next(4, 20)) };
        return random.Next(4) switch
        {
            0 => bare with { Pattern = MovementPatterns.All[random.Next(MovementPatterns.All.Count)] },
            1 => bare with { Quality = TrainedQualities.All[random.Next(TrainedQualities.All.Count)] },
            2 => bare with { ExerciseId = SampleTraining.Exercises.All[random.Next(SampleTraining.Exercises.All.Count)].Id },
            _ => bare with { IsEverything = random.Next(4) == 0, Pattern = MovementPattern.Jump },
        };
    }

    private static SessionSlot Slot(Random random, int day, bool timed) => new()
    {
        Date = SampleSquad.Monday.AddDays(day),
        Start = timed ? new TimeOnly(random.Next(7, 19), 0) : null,
        Kind = s_kinds[random.Next(s_kinds.Length)],
        Minutes = random.Next(8) == 0 ? random.Next(15, 35) : random.Next(40, 100),
        Room = random.Next(20) == 0 ? "" : "weight room",
        Groups = random.Next(5) == 0 ? ["Group 0"] : [],
    };

    private static Room Room(Random random)
        => new("weight room", SampleTraining.Room.Stations.Where(_ => random.Next(12) > 0).ToDictionary(s => s.Key, _ => random.Next(1, 7)));

    private static PlanRules Rules(Random random)
    {
        PlanRule Changed(string id, double value) => PlanRules.Standard[id] with { Value = value };
        List<PlanRule> changed = [Changed(RuleIds.HardSets, random.Next(6, 20)), Changed(RuleIds.ExerciseTimes, random.Next(1, 4)), Changed(RuleIds.PlayersPerPlace, random.Next(1, 5)), Changed(RuleIds.PatternTimes, random.Next(1, 4))];
        if (random.Next(5) == 0) changed.Add(Changed(RuleIds.JumpContacts, random.Next(20, 100)));
        string[] soft = [RuleIds.HardSets, RuleIds.Prerequisites, RuleIds.HighImpactGap, RuleIds.StationPlaces, RuleIds.DayDemands, RuleIds.SessionMinutes];
        if (random.Next(4) == 0) changed.RemoveAll(r => r.Id == RuleIds.HardSets);
        if (random.Next(4) == 0)
        {
            var id = soft[random.Next(soft.Length)];
            changed.RemoveAll(r => r.Id == id);
            changed.Add(PlanRules.Standard[id] with { Handling = random.Next(2) == 0 ? RuleHandling.Flag : RuleHandling.Off });
        }

        return PlanRules.With(changed);
    }

    private static EarlierChoice Earlier(Random random, List<PlanPlayer> players, List<int> days) => new()
    {
        Date = SampleSquad.Monday.AddDays(days[random.Next(days.Count)]),
        Group = players[random.Next(players.Count)].Group,
        ExerciseId = SampleTraining.Exercises.All[random.Next(SampleTraining.Exercises.All.Count)].Id,
        Force = random.Next(6) switch { 0 => ChoiceForce.Keep, 1 or 2 => ChoiceForce.Never, _ => ChoiceForce.Planned },
        Place = "training/plan.csv, line 2",
    };
}
