using Analytics.Simulation.ErrorRates;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.SeasonStudy.Courses;

/// <summary>How intervals and verdicts on single athletes fare in one metric and scenario.</summary>
public sealed class AthleteRates(string metricId)
{
    public string MetricId { get; } = metricId;

    /// <summary>The interval of the change holds the true change.</summary>
    public Tally Covered { get; } = new();

    /// <summary>Clear verdict for an athlete who has not changed at all.</summary>
    public Tally FalseClear { get; } = new();

    /// <summary>Clear verdict in the right direction for an athlete whose true change is at least twice the detectable one.</summary>
    public Tally Found { get; } = new();

    /// <summary>Clear verdict against the direction of the true change.</summary>
    public Tally WrongWay { get; } = new();

    public void Add(SeasonChain chain, SeasonMeasures.Measure measure)
    {
        var change = measure.Change;
        foreach (var athlete in change.Athletes.Where(a => a.Change is not null && a.Reason is null))
        {
            var (from, to) = (athlete.Baseline.Value.Date, athlete.Last.Value.Date);
            var truth = measure.TrueChange(athlete.AthleteId, from, to);
            var (clear, rises) = (athlete.Verdict.IsClear(), athlete.Difference > 0);
            Covered.Add(chain.Number, athlete.Interval!.Value.Contains(truth));
            if (measure.IsUnchanged(athlete.AthleteId, from, to))
            {
                FalseClear.Add(chain.Number, clear);
                continue;
            }

            WrongWay.Add(chain.Number, clear && rises != truth > 0);
            if (Math.Abs(truth) >= 2 * athlete.Change!.DetectableChange(change.Rule.Level)) Found.Add(chain.Number, clear && rises == truth > 0);
        }
    }
}
