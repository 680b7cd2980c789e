using Analytics.Planning.People;

namespace Analytics.Simulation.WeekStudy.Weeks;

/// <summary>What the planner says of a player's need of one quality.</summary>
public enum Call
{
    /// <summary>A need.</summary>
    Need,

    /// <summary>A probability that is too low for a need.</summary>
    NotSure,

    /// <summary>The test that speaks is low enough, another of the same quality objects.</summary>
    TestsDisagree,

    /// <summary>It cannot say for another reason: not tested, nobody to compare with.</summary>
    CannotSay,
}

/// <summary>Reads the planner's answer.</summary>
public static class Calls
{
    public static Call Of(QualityNeed need)
        => need.IsNeed ? Call.Need
            : need.Probability is not null ? Call.NotSure
            : need.Reason.StartsWith("cannot say: tests disagree", StringComparison.Ordinal) ? Call.TestsDisagree
            : Call.CannotSay;
}
