using Analytics.Simulation.Demo;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates;

/// <summary>How the verdicts on one metric fare between two days.</summary>
public sealed class ChangeRates(JudgedMetric metric, int from, int to)
{
    public JudgedMetric Metric { get; } = metric;

    /// <summary>Interval of the change holds the true change: everybody.</summary>
    public Tally Covered { get; } = new();

    /// <summary>The same for athletes measured in the same way on both days; differs for lifts only.</summary>
    public Tally CoveredLikeForLike { get; } = new();

    /// <summary>Clear verdict for an athlete who has not changed at all.</summary>
    public Tally FalseClear { get; } = new();

    /// <summary>Clear verdict in the right direction for an athlete who has changed, by size class.</summary>
    public Dictionary<string, Tally> Hits { get; } = [];

    /// <summary>Clear verdict in the wrong direction for an athlete who has changed.</summary>
    public Tally WrongWay { get; } = new();

    private readonly List<double> _typicalErrors = [], _sizes = [];

    /// <summary>Mean typical error, in the metric's unit at the middle of the values.</summary>
    public double TypicalError => _typicalErrors.Average();

    public void Add(SeasonChain chain)
    {
        var change = chain.Profile.Change(chain.Metric(Metric.Id), chain.Days[from], chain.Days[to]);
        foreach (var athlete in change.Athletes)
        {
            if (athlete.Interval is not { } interval) continue;
            var player = chain.Players[athlete.AthleteId];
            var truth = Metric.Truth(player, player.On(to)) - Metric.Truth(player, player.On(from));
            Covered.Add(chain.Number, interval.Contains(truth));
            if (athlete.Before.StandardError.HasValue == athlete.After.StandardError.HasValue) CoveredLikeForLike.Add(chain.Number, interval.Contains(truth));
            var error = change.Reliability.ErrorAt((athlete.Before.Value + athlete.After.Value) / 2)!.Value;
            _typicalErrors.Add(error);
            _sizes.Add(truth / error);
            if (Metric.Unchanged(player, from, to)) FalseClear.Add(chain.Number, athlete.Verdict.IsClear());
        }
    }
}
