using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Transfer;

/// <summary>
/// What goes into a metric, found by trying: a value that changes when body mass changes holds body mass; one that changes when the trials of one kind are
/// taken away comes from them. Works for any metric, also one sketched in a notebook.
/// </summary>
internal static class SharedInputs
{
    // Enough to meet every way a metric is made; each costs a few evaluations.
    private const int MostAthletes = 8;

    /// <summary>Names of the inputs of a metric, sorted.</summary>
    public static IReadOnlyList<string> Of(Metric metric, IReadOnlyList<IReadOnlyList<AthleteDay>> days)
    {
        var found = new SortedSet<string>(StringComparer.Ordinal);
        var tried = 0;
        foreach (var day in days.SelectMany(d => d))
        {
            var values = Values(metric, day);
            if (values.Count == 0) continue;
            if (day.BodyMass is { } mass && !values.SequenceEqual(Values(metric, day with { BodyMass = Mass.FromKilograms(mass.Kilograms * 1.1) }))) found.Add("body mass");
            foreach (var kind in day.Trials.Select(Kind).Distinct().ToList())
            {
                if (!values.SequenceEqual(Values(metric, day with { Trials = [.. day.Trials.Where(t => Kind(t) != kind)] }))) found.Add(kind);
            }

            if (++tried == MostAthletes) break;
        }

        return [.. found];
    }

    private static List<double> Values(Metric metric, AthleteDay day) => [.. metric.FromTrials(day).Select(v => v.Value)];

    private static string Kind(Trial trial) => trial switch
    {
        BodyMeasure => "body mass",
        LiftSet lift => $"sets of the {lift.Lift.Replace('_', ' ')}",
        JumpTrial jump => jump.Kind switch
        {
            JumpKind.Countermovement => "countermovement jumps",
            JumpKind.StandingLong => "standing long jumps",
            _ => $"{jump.Kind.ToString().ToLowerInvariant()} jumps",
        },
        SprintTrial => "sprint runs",
        AgilityTrial agility => $"runs of the {agility.Test.Replace('_', ' ')}",
        ThrowTrial thrown => $"{thrown.Throw.Replace('_', ' ')} throws",
        StairTrial => "stair runs",
        ContactTrial => "runs into contact",
        _ => trial.GetType().Name,
    };
}
