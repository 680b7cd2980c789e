using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Solving;

namespace Analytics.Planning.Tests.Solving;

/// <summary>An earlier plan and one change: what the coach fixed stays, and little else moves.</summary>
public class ReplanTests
{
    private static readonly PlanProblem Week = SampleSquad.Problem(SampleSquad.Players(9, 3), SampleSquad.FourDays);
    private static readonly WeekPlan First = WeekPlanner.Plan(Week).Plan!;

    [Fact]
    public void Replan_NothingChanged_IsTheSamePlan()
    {
        var again = WeekPlanner.Plan(Week with { Earlier = Rows(First) }).Plan!;
        Assert.Empty(again.Changes);
        Assert.Equal(Lines(First), Lines(again));
    }

    [Fact]
    public void Replan_OneExerciseRuledOut_ChangesThatSessionOnly()
    {
        var session = First.Sessions.First(s => s.Kind.Id == "max_strength" && s.Group == "Linemen");
        var out_ = session.Shared.First(i => i.Exercise.Quality == TrainedQuality.MaximalStrength).Exercise.Id;
        var again = WeekPlanner.Plan(Week with { Earlier = [.. Rows(First), new() { Date = session.Slot.Date, Group = "Linemen", ExerciseId = out_, Force = ChoiceForce.Never }] }).Plan!;
        Assert.DoesNotContain(again.Sessions.First(s => s.Slot == session.Slot && s.Group == "Linemen").Shared, i => i.Exercise.Id == out_);
        Assert.InRange(again.Changes.Count, 1, 3);
        Assert.All(again.Changes, c => Assert.StartsWith("Linemen, Mon 15 Jun", c, StringComparison.Ordinal));
    }

    [Fact]
    public void Replan_KeptChoice_Stays()
    {
        var session = First.Sessions.First(s => s.Kind.Id == "power" && s.Group == "Backs");
        var free = SampleTraining.Exercises.All.First(e => e is { Quality: TrainedQuality.ExplosivePower, Pattern: MovementPattern.Weightlifting } && session.Shared.All(i => i.Exercise.Id != e.Id));
        var again = WeekPlanner.Plan(Week with { Earlier = [.. Rows(First), new() { Date = session.Slot.Date, Group = "Backs", ExerciseId = free.Id, Force = ChoiceForce.Keep }] }).Plan!;
        var kept = Assert.Single(again.Sessions.First(s => s.Slot == session.Slot && s.Group == "Backs").Shared, i => i.Exercise.Id == free.Id);
        Assert.True(kept.IsKept);
        Assert.InRange(again.Changes.Count, 1, 4);
    }

    [Fact]
    public void Replan_OwnWorkKeptForAPlayer_IsHis()
    {
        // Without a need he would do the default.
        var player = Week.Players.First(p => p.Needs.Count == 0);
        var day = First.Sessions.First(s => s.Players.Contains(player.Id) && s.Kind.Id == "speed");
        var again = WeekPlanner.Plan(Week with { Earlier = [new EarlierChoice { Date = day.Slot.Date, AthleteId = player.Id, ExerciseId = "roll_out", IsOwnWork = true, Force = ChoiceForce.Keep }] }).Plan!;
        Assert.Contains(again.Sessions.First(s => s.Slot == day.Slot && s.Players.Contains(player.Id)).For(player.Id), i => i.Exercise.Id == "roll_out");
    }

    [Fact]
    public void Replan_NewRestriction_LeavesTheOthersAlone()
    {
        var hurt = Week.Players[0];
        IReadOnlyList<PlanPlayer> players = [hurt with { Restrictions = [new() { AthleteId = hurt.Id, From = SampleSquad.Monday, Pattern = MovementPattern.Jump }] }, .. Week.Players.Skip(1)];
        var again = WeekPlanner.Plan(Week with { Players = players, Earlier = Rows(First) }).Plan!;
        Assert.All(again.Sessions.Where(s => s.Players.Contains(hurt.Id)).SelectMany(s => s.For(hurt.Id)), i => Assert.NotEqual(MovementPattern.Jump, i.Exercise.Pattern));
        Assert.Empty(again.Changes);
        Assert.Equal(First.Sessions.Count + 4, again.Sessions.Count);
    }

    private static IReadOnlyList<EarlierChoice> Rows(WeekPlan plan) =>
    [
        .. plan.Sessions.SelectMany(s => s.Shared.Select(i => new EarlierChoice { Date = s.Slot.Date, Group = s.Group, ExerciseId = i.Exercise.Id, SchemeId = i.Scheme.Id })),
        .. plan.Sessions.SelectMany(s => s.Own.SelectMany(o => o.ForNeed.Concat(o.ByDefault).Select(p => new EarlierChoice { Date = s.Slot.Date, AthleteId = p, ExerciseId = o.Item.Exercise.Id, SchemeId = o.Item.Scheme.Id, IsOwnWork = true }))),
    ];

    private static IEnumerable<string> Lines(WeekPlan plan) => plan.Sessions.SelectMany(s => s.Shared.Select(i => $"{s.Group} {i.Exercise.Id} {i.Scheme.Id}")
        .Concat(s.Own.SelectMany(o => o.ForNeed.Concat(o.ByDefault).Order(StringComparer.Ordinal).Select(p => $"{p} {o.Item.Exercise.Id}"))));
}
