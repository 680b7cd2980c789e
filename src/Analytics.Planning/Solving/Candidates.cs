using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Solving;

/// <summary>Which schemes fit which exercises. This is a matter of meaning, not of rules: a scheme in per cent needs a lift, one for each side needs sides.</summary>
internal static class Candidates
{
    /// <summary>All pairs that fit, in the order of the files. A contrast pair takes each reactive movement it may be paired with.</summary>
    public static IReadOnlyList<Candidate> All(PlanProblem problem)
        => [.. problem.Exercises.All.SelectMany(e => problem.Schemes.Where(s => s.Fits(e)).SelectMany(s => Pairs(problem, e, s)))];

    private static IEnumerable<Candidate> Pairs(PlanProblem problem, Exercise exercise, SetScheme scheme)
        => scheme.Kind != SchemeKind.Contrast ? [new(exercise, scheme, null)]
            : problem.Exercises.All.Where(IsPartner).OrderBy(e => e.Preference).Take(3).Select(e => new Candidate(exercise, scheme, e));

    // A partner of high impact would make every contrast pair a day of hard landings.
    private static bool IsPartner(Exercise e)
        => e is { Quality: TrainedQuality.ReactiveAbility, IsUnilateral: false, JumpContacts: > 0 } && e.Impact != Impact.High;
}
