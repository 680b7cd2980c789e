using Analytics.Metrics.Trials;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Checks;

/// <summary>Holds back a second row for an attempt that already stands in the day; the first is kept.</summary>
internal static class DuplicateAttempts
{
    /// <summary>Checks one day.</summary>
    public static void HoldBack(CandidateDay day)
    {
        var seen = new Dictionary<AttemptKey, Trial>(day.Candidates.Count);
        day.HoldBackWhere(candidate => seen.TryAdd(AttemptKey.Of(candidate.Trial), candidate.Trial) ? null : Fault(candidate, seen[AttemptKey.Of(candidate.Trial)]));
    }

    private static CellFault Fault(Candidate candidate, Trial first)
    {
        var trial = candidate.Trial;
        var where = trial.Source!.File == first.Source!.File ? $"line {first.Source.Line}" : $"{first.Source.File} line {first.Source.Line}";
        var same = IsSame(trial, first);
        return new CellFault(trial is LiftSet ? "set" : trial is BodyMeasure ? "athlete_id" : "attempt", trial is BodyMeasure ? CellMarks.Person(trial.AthleteId) : trial.Attempt.ToString(System.Globalization.CultureInfo.InvariantCulture),
            same ? $"the same result already stands in {where}" : $"{Name(trial)} already stands in {where} with another result",
            same ? "Delete one of the two rows." : trial is BodyMeasure ? "Keep the right one of the two rows." : "Number the attempts 1, 2, 3, or delete the wrong row.");
    }

    private static bool IsSame(Trial a, Trial b)
    {
        if (a is not SprintTrial run || b is not SprintTrial other) return (a with { Source = null, Tester = null }).Equals(b with { Source = null, Tester = null });
        return run.Splits.SequenceEqual(other.Splits);
    }

    private static string Name(Trial trial) => trial switch
    {
        BodyMeasure => "a body mass of this athlete and day",
        LiftSet lift => $"set {lift.Attempt} of {CellText.Show(lift.Lift)}",
        _ => $"attempt {trial.Attempt}",
    };
}
