using System.Globalization;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Loads;

/// <summary>What the loads of one exercise are taken of for one player.</summary>
public sealed record ExerciseBase
{
    /// <summary>The test behind it; null when there is none that says something today.</summary>
    public LoadBase? Test { get; private init; }

    /// <summary>The exercise's own 1RM as a share of the tested one; 1 for an own test.</summary>
    public double Share { get; private init; } = 1;

    /// <summary>The lift it was worked out from, in words; null for an own test.</summary>
    public string? WorkedOutFrom { get; private init; }

    /// <summary>Why there is none, "test first: ..."; null when there is one.</summary>
    public string? Instead { get; private init; }

    /// <summary>Where the log has put it since the test; null where it stays with the test.</summary>
    public LoggedBase? Log { get; private init; }

    /// <summary>1RM of the exercise that per cent are of, kg.</summary>
    public double Kilograms => Log?.Kilograms ?? (Test is null ? 0 : Test.Kilograms * Share);

    /// <summary>Whether that is the lower side of the test's range.</summary>
    public bool IsLowerSide => Log is null && Test is { IsLowerSide: true };

    /// <summary>Heaviest load tested, carried over to the exercise, kg. Where the exercise takes more than the lift, the lift's load itself: more was never shown.</summary>
    public double TestedKilograms => Test is null ? 0 : Test.Test.HeaviestKilograms * Math.Min(1, Share);

    /// <summary>No load goes above it, kg; infinite where the estimate is not doubtful.</summary>
    public double CapKilograms => Test?.Test.Doubt is null ? double.PositiveInfinity : TestedKilograms;

    /// <summary>The base: the exercise's own test, else the share of the basis lift's. An own test that says nothing today, or is old, gives way to a basis lift that does and is not. Where
    /// sessions were logged after the test, the 1RM stands where the log has put it; no test, no load, whatever was logged.</summary>
    /// <param name="player">The player.</param>
    /// <param name="exercise">An exercise with a lift as basis.</param>
    /// <param name="today">The day.</param>
    /// <param name="rules">The rules.</param>
    public static ExerciseBase Of(PlanPlayer player, Exercise exercise, DateOnly today, PlanRules rules)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(exercise);
        var known = OfTests(player, exercise, today, rules);
        return known.Test is { } test && player.Logged.GetValueOrDefault(exercise.Id) is { } log && test.Test.Date < log.LoggedOn ? known with { Log = log } : known;
    }

    private static ExerciseBase OfTests(PlanPlayer player, Exercise exercise, DateOnly today, PlanRules rules)
    {
        var own = player.Maxima.GetValueOrDefault(exercise.Id) is { } test ? LoadBase.Of(test, today, rules) : null;
        var lift = exercise.Basis.Lift ?? exercise.Id;
        if (LoadBase.IsAddedWeight(own is null ? lift : exercise.Id)) return new() { Instead = "small steps by feel: weight added on body weight, per cent of it do not fit" };
        var other = lift != exercise.Id && player.Maxima.GetValueOrDefault(lift) is { } basis ? LoadBase.Of(basis, today, rules) : null;
        // Two exercises that go by one lift must not be loaded from tests of different ages: the sheet would contradict itself.
        if (own is { Gap: null } && !(own.IsOld && other is { Gap: null, IsOld: false, IsLowerSide: false })) return new() { Test = own };
        if (other is { Gap: null }) return new() { Test = other, Share = exercise.OwnMaximumPercent / 100, WorkedOutFrom = LoadWords.Lift(lift) };
        return new() { Instead = TestFirst(own ?? other, lift) };
    }

    private static string TestFirst(LoadBase? known, string lift) => "test first: " + known?.Gap switch
    {
        BaseGap.HurtSince => $"hurt since the {LoadWords.Lift(known.Test.Lift)} test",
        BaseGap.Expired => string.Create(CultureInfo.InvariantCulture, $"{LoadWords.Lift(known.Test.Lift)} last tested {known.AgeDays / 7} weeks ago"),
        _ => $"{LoadWords.Lift(lift)} never tested",
    };
}
