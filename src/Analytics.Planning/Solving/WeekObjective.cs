using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Weeks;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>
/// What a good week is, in order: nothing of an earlier plan changes without need; probable needs are served; the week is varied; little equipment
/// changes. The order is kept by weights that differ by about an order of size; they are our choice, no source, and stand in docs/methods/planning.md.
/// </summary>
internal static class WeekObjective
{
    /// <summary>A choice of an earlier plan that does not come, or a new one.</summary>
    public const int Change = 20_000;

    /// <summary>A rule that is only flagged is kept at a place.</summary>
    public const int FlaggedRule = 3_000;

    /// <summary>A player's own work on a need, for a probability of 1.</summary>
    public const int OwnNeed = 1_000;

    /// <summary>A set of the shared part, for a probability of 1 in all players.</summary>
    public const int SharedNeedSet = 60;

    /// <summary>Own work at all.</summary>
    public const int OwnWork = 400;

    /// <summary>A set of the shared part.</summary>
    public const int SharedSet = 10;

    /// <summary>A quality that is the default once in the week.</summary>
    public const int DefaultQuality = 150;

    /// <summary>A default of a quality that somebody of the group needs: who does not need it then does as much of it as who does.</summary>
    public const int DefaultOfANeed = 120;

    /// <summary>A pattern that comes in the week.</summary>
    public const int NewPattern = 60;

    /// <summary>An exercise that comes in the week, once however often.</summary>
    public const int NewExercise = 25;

    /// <summary>A staple, exercise or scheme; each step down costs it.</summary>
    public const int Preference = 30;

    /// <summary>Sets that count: more of them in one exercise serve no better, and light schemes would crowd out heavy ones.</summary>
    public const int SetsThatCount = 4;

    /// <summary>A pattern that comes in a session, once however often.</summary>
    public const int PatternOfDay = 30;

    /// <summary>A squat on two legs, and a press with both arms, with the bar, on a day of strength that is not to be light.</summary>
    public const int MainLift = 250;

    /// <summary>Such a lift as own work.</summary>
    public const int OwnMainLift = 90;

    /// <summary>A second weightlifting movement of one family in a session: two cleans that are nearly one.</summary>
    public const int SecondOfFamily = 150;

    /// <summary>An exercise whose load is not known of anybody.</summary>
    public const int UnknownLoad = 150;

    /// <summary>A restricted player does what his group does.</summary>
    public const int WithGroup = 40;

    /// <summary>An exercise the group did on the same day of the week before.</summary>
    public const int AsLastWeek = 20;

    /// <summary>A station used in a session.</summary>
    public const int Station = 15;

    /// <param name="week">The model.</param>
    /// <param name="groups">Plans of the groups, which their restricted players follow where they may.</param>
    public static LinearExpr Of(WeekModel week, GroupPlans groups)
    {
        var sum = LinearExpr.NewBuilder();
        foreach (var day in week.Days) AddDay(week, day, sum);
        for (var u = 0; u < week.Units.Count; u++) AddVariety(week, groups, u, sum);
        foreach (var kept in week.Rules.Flagged) sum.AddTerm(kept, FlaggedRule);
        WeekChanges.Add(week, sum);
        return sum;
    }

    private static void AddDay(WeekModel week, UnitDay day, LinearExprBuilder sum)
    {
        foreach (var choice in day.Shared)
        {
            var candidate = choice.Candidate;
            var need = day.Unit.Players.Average(p => p.Needs.Where(n => n.IsNeed && n.IsServedBy(candidate.Exercise)).Sum(n => n.Probability ?? 0));
            sum.AddTerm(choice.Chosen, Math.Min(candidate.Scheme.Sets, SetsThatCount) * (SharedSet + (int)Math.Round(SharedNeedSet * need)) + Liking(day, candidate) + (WasLastWeek(week.Problem, day, candidate) ? AsLastWeek : 0));
        }

        foreach (var choice in day.Own.Values.SelectMany(o => o)) sum.AddTerm(choice.Chosen, candidate: choice.Candidate, day);
        foreach (var pattern in day.Shared.GroupBy(c => c.Candidate.Exercise.Pattern))
            sum.AddTerm(week.Reached([.. pattern.Select(c => c.Chosen)], $"pattern {pattern.Key} {day}"), PatternOfDay);
        foreach (var family in day.Shared.Where(c => c.Candidate.ZoneParts > 0).GroupBy(c => c.Candidate.Exercise.Quality))
            sum.AddTerm(Second(week, [.. family.Select(c => c.Chosen)], $"second {family.Key} {day}"), -SecondOfFamily);
        foreach (var main in day.Shared.Where(c => IsMainLift(day, c.Candidate)).GroupBy(c => c.Candidate.Exercise.Pattern))
            sum.AddTerm(week.Reached([.. main.Select(c => c.Chosen)], $"main {main.Key} {day}"), MainLift);
        if (day.HasOwn is not null) sum.AddTerm(day.HasOwn, OwnWork);
        foreach (var (quality, isDefault) in day.Default.Where(d => day.Unit.Players.Any(p => p.Needs.Any(n => n.IsNeed && n.Quality == d.Key)))) sum.AddTerm(isDefault, -DefaultOfANeed);
        foreach (var (id, own) in day.OwnOf)
            foreach (var need in day.Unit.Players.First(p => p.Id == id).Needs.Where(n => n.IsNeed && own.ContainsKey(n.Quality)))
                sum.AddTerm(Serves(week, day, own[need.Quality], need), (int)Math.Round(OwnNeed * (need.Probability ?? 0)));
        foreach (var station in day.All.SelectMany(c => c.Candidate.Stations).Distinct().Order(StringComparer.Ordinal))
            sum.AddTerm(week.Touched([.. day.All.Where(c => c.Candidate.Stations.Contains(station)).Select(c => c.Chosen)], $"uses {station} {day}"), -Station);
    }

    private static bool WasLastWeek(PlanProblem problem, UnitDay day, Candidate candidate)
        => problem.Earlier.Any(e => e.Force != ChoiceForce.Never && !e.IsOwnWork && e.Group == day.Unit.Group && EarlierRows.IsAbout(problem, e, day.Slot, day.Unit.Group, later: 7) && e.ExerciseId == candidate.Exercise.Id);

    private static void AddTerm(this LinearExprBuilder sum, BoolVar chosen, Candidate candidate, UnitDay day)
        => sum.AddTerm(chosen, Math.Min(candidate.Scheme.Sets, SetsThatCount) * SharedSet + Liking(day, candidate) + (IsMainLift(day, candidate) ? OwnMainLift : 0));

    private static bool IsMainLift(UnitDay day, Candidate candidate)
        => candidate.Exercise is { Quality: TrainedQuality.MaximalStrength, IsUnilateral: false, Implement: LoadableWeights.Barbell, Pattern: MovementPattern.Squat or MovementPattern.Push }
            && day.Kind.Of(candidate.Exercise) is { MostPercent: null };

    // A weak squat is not served by a press: only an exercise for the half of the body the need is about counts.
    private static BoolVar Serves(WeekModel week, UnitDay day, BoolVar takes, QualityNeed need)
    {
        if (need.Half == BodyHalf.Any) return takes;
        var serves = week.Model.NewBoolVar($"serves {takes.Name()} {need.Half}");
        week.Model.AddImplication(serves, takes);
        week.Model.Add(LinearExpr.Sum(day.Own[need.Quality].Where(c => need.IsServedBy(c.Candidate.Exercise)).Select(c => c.Chosen)) >= serves);
        return serves;
    }

    // How many come beyond the first.
    private static IntVar Second(WeekModel week, IReadOnlyList<BoolVar> choices, string name)
    {
        var more = week.Model.NewIntVar(0, choices.Count, name);
        week.Model.Add(LinearExpr.Sum(choices) <= more + 1);
        return more;
    }

    private static int Liking(UnitDay day, Candidate candidate)
    {
        var exercise = candidate.Exercise;
        var unknown = exercise.Basis.Lift is { } lift ? day.Unit.Players.Count(p => !p.Maxima.ContainsKey(lift) && !p.Maxima.ContainsKey(exercise.Id)) / (double)day.Unit.Players.Count : 0;
        return Preference * (6 - exercise.Preference - candidate.Scheme.Preference) - (int)Math.Round(UnknownLoad * unknown);
    }

    private static void AddVariety(WeekModel week, GroupPlans groups, int unit, LinearExprBuilder sum)
    {
        var days = week.Of(unit).ToList();
        void Reward<TKey>(IEnumerable<(TKey Key, BoolVar Chosen)> choices, string what, int value)
        {
            foreach (var group in choices.GroupBy(c => c.Key))
                sum.AddTerm(week.Reached([.. group.Select(c => c.Chosen)], $"{what} {group.Key} {unit}"), value);
        }

        Reward(days.SelectMany(d => d.All).Select(c => (c.Candidate.Exercise.Id, c.Chosen)), "exercise", NewExercise);
        Reward(days.SelectMany(d => d.All).Select(c => (c.Candidate.Exercise.Pattern, c.Chosen)), "pattern", NewPattern);
        Reward(days.SelectMany(d => d.Default.Select(q => (q.Key, q.Value))), "default", DefaultQuality);
        if (!week.Units[unit].IsApart) return;
        foreach (var day in days)
            foreach (var choice in day.Shared.Where(c => groups.Has(day, c.Candidate))) sum.AddTerm(choice.Chosen, WithGroup);
    }
}
