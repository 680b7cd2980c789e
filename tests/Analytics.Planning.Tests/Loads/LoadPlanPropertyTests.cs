using Analytics.Planning.Loads;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace Analytics.Planning.Tests.Loads;

/// <summary>Whatever is known of a player and whatever the scheme asks: what is never allowed does not come.</summary>
public sealed class LoadPlanPropertyTests
{
    private static Gen<(KnownMaximum Test, SetScheme Scheme, double Own)> Drawn() =>
        from kilograms in Gen.Choose(5, 350)
        from width in Gen.Choose(-1, 120)
        from lifted in Gen.Choose(30, 100)
        from doubtful in Gen.Elements(false, true)
        from days in Gen.Choose(0, 250)
        from kind in Gen.Elements(SchemeKind.Straight, SchemeKind.Ramp, SchemeKind.Cluster)
        from sets in Gen.Choose(1, 8)
        from repetitions in Gen.Choose(1, 15)
        from percents in Gen.Two(Gen.Choose(0, 110))
        from reserve in Gen.Choose(-1, 8)
        from own in Gen.Choose(30, 130)
        let most = percents.Item1 == 0 ? (double?)null : Math.Max(percents.Item1, percents.Item2)
        select (
            new KnownMaximum("back_squat", kilograms, width < 0 ? null : new Analytics.Statistics.Interval(kilograms * (1 - width / 100.0), kilograms * 1.1), Made.Today.AddDays(-days), "drawn",
                doubtful ? "drawn doubt" : null, kilograms * lifted / 100.0, null),
            Made.Sets(sets, repetitions, reserve: reserve < 0 ? null : reserve) with { Kind = kind, LeastPercent = most is null ? null : Math.Min(percents.Item1, percents.Item2), MostPercent = most },
            (double)own);

    [Property(MaxTest = 500, Replay = "(20260608,11)")]
    public Property AnyTestAndScheme_KeepsTheBounds() => Prop.ForAll(Drawn().ToArbitrary(), drawn =>
    {
        var exercise = Made.Lift("front_squat", Exercises.MovementPattern.Squat, Exercises.TrainedQuality.MaximalStrength, "back_squat", drawn.Own);
        var plan = LoadPlan.Of(Made.Player(drawn.Test), Made.Item(exercise, drawn.Scheme), Made.Kilograms, PlanRules.Standard, Made.Today);

        Assert.Equal(plan.Instead is null, plan.Working.Count > 0);
        Assert.Equal(plan.Instead is null ? drawn.Scheme.Sets : 0, plan.Working.Count);
        if (plan.Working.Count == 0) return;
        var loads = plan.Working.Select(m => m.Kilograms).ToList();
        Assert.All(loads, l => Assert.Equal(0, l % 2.5, 9));
        Assert.Equal(loads.Order(), loads);
        Assert.InRange(plan.BaseKilograms!.Value, 0, drawn.Test.Kilograms * drawn.Own / 100 + 1e-9);
        var asked = SetPercents.Of(drawn.Scheme, Metrics.Strength.RepetitionTables.Textbook).Percent.Max();
        Assert.InRange(loads[^1], 20, Math.Max(20, plan.BaseKilograms.Value * asked / 100 + 1e-6));
        if (drawn.Test.Doubt is not null) Assert.True(loads[^1] <= drawn.Test.HeaviestKilograms + 1e-6);
        if (loads[^1] > drawn.Test.HeaviestKilograms + 1e-6) Assert.True(plan.IsAboveTested);
        var warm = plan.WarmUp.Select(w => w.Load.Kilograms).ToList();
        Assert.Equal(warm.Distinct().Order(), warm);
        Assert.All(warm, w => Assert.InRange(w, 20, loads[0] - 1e-6));
        Assert.Contains(plan.Notes, n => n == "worked out from the back squat");
        Assert.DoesNotContain(plan.Notes, n => n.Contains("NaN", StringComparison.Ordinal));
    });
}
