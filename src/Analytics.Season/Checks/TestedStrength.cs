using Analytics.Metrics.Load;
using Analytics.Metrics.Trials;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Checks;

/// <summary>
/// The best of each athlete in each lift on the testing days. A training load far beyond it that another unit would bring near was typed in that unit; too light a load
/// tells nothing, since light sets are usual.
/// </summary>
internal sealed class TestedStrength
{
    // The ratios by which loads of testing days are judged: common practice, no source.
    private static readonly Ratios Ratios = new(1.6, 1.35);

    private readonly Dictionary<(string Athlete, string Lift), double> best = [];

    /// <summary>Takes the best sets of testing days whose own checks are done.</summary>
    public TestedStrength(IEnumerable<CandidateDay> days)
    {
        foreach (var set in days.SelectMany(d => d.Candidates).Select(c => c.Trial).OfType<LiftSet>())
        {
            var strength = Measures.Strength(set);
            if (strength > best.GetValueOrDefault((set.AthleteId, set.Lift))) best[(set.AthleteId, set.Lift)] = strength;
        }
    }

    /// <summary>What is wrong with a training load; null when nothing is, or when the lift was never tested.</summary>
    public CellFault? Fault(string athleteId, ExerciseSets done, QuantityColumn column, ReadTable table)
    {
        var load = done.Load.Kilograms;
        if (!best.TryGetValue((athleteId, done.Lift), out var tested) || load <= tested) return null;
        return UnitGuess.Of(column, table, load, tested, Ratios) is { } meant
            ? UnitGuess.Fault(column, table, load, $"{CellText.Number(Math.Round(load / tested, 2))} times the best {done.Lift} of {athleteId} on a testing day", meant)
            : null;
    }
}
