using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Simulation.Randomness;
using Analytics.Statistics.Change;
using Analytics.Statistics.Reliability;
using Analytics.Statistics.Summaries;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>A squad as a report has it: error from a retest, worthwhile change from the squad's own spread, one rule for all.</summary>
/// <param name="Changes">Change of each athlete with its error.</param>
/// <param name="Worthwhile">Smallest worthwhile change found; null when no spread was.</param>
/// <param name="Truth">True change of everybody.</param>
public sealed record SquadOfReport(IReadOnlyList<IndividualChange> Changes, double? Worthwhile, double Truth)
{
    /// <summary>A new squad.</summary>
    /// <param name="athletes">Athletes tested on both days.</param>
    /// <param name="df">Athletes retested, less 1.</param>
    /// <param name="reliability">ICC of the test.</param>
    /// <param name="change">True change of everybody, in true smallest worthwhile changes.</param>
    /// <param name="random">The draw's stream.</param>
    public static SquadOfReport Draw(int athletes, int df, double reliability, double change, RandomNumbers random)
    {
        var retest = new TableCell(df + 1, 2, reliability, ErrorKind.Normal);
        var error = TypicalErrors.FromTrials(SimulatedTable.Draw(retest, random).Table);
        var truth = change * 0.2 * retest.Spread;
        var before = new double[athletes];
        var changes = new IndividualChange[athletes];
        for (var i = 0; i < athletes; i++)
        {
            var values = ErrorLaw.Athlete(ErrorKind.Normal, retest.Spread, [0, truth], random);
            before[i] = values[0];
            changes[i] = IndividualChange.Between(values[0], values[1], error.Value, error.DegreesOfFreedom);
        }

        return new(changes, SmallestWorthwhileChange.OfTrueSpread(Moments.StandardDeviation(before), error.Value).Value, truth);
    }

    /// <summary>Share of the athletes whose interval holds the true change.</summary>
    public Share Covered() => new(Changes.Count(c => c.Interval().Contains(Truth)), Changes.Count);

    /// <summary>Whether the interval of the mean change holds the true one.</summary>
    public bool MeanCovered() => MeanChange.Of([.. Changes.Select(c => c.Difference)]).Mean.Interval!.Value.Contains(Truth);

    /// <summary>Share of the athletes with one of these verdicts.</summary>
    public Share Judged(params Verdict[] verdicts) => new(Changes.Count(c => verdicts.Contains(BeyondErrorRule.Standard.Judge(c, Worthwhile))), Changes.Count);
}
