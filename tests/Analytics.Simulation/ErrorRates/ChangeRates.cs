using Analytics.Metrics.Profile;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates;

/// <summary>How intervals and verdicts on one metric fare between two days.</summary>
/// <param name="metric">The metric.</param>
/// <param name="from">Earlier testing day.</param>
/// <param name="to">Later testing day.</param>
/// <param name="kind">For lifts: how the two values were come by; null for all.</param>
public sealed class ChangeRates(JudgedMetric metric, int from, int to, LiftPair? kind = null)
{
    public JudgedMetric Metric { get; } = metric;

    public LiftPair? Kind { get; } = kind;

    /// <summary>The interval of the change holds the true change.</summary>
    public Tally Covered { get; } = new();

    /// <summary>Clear verdict for an athlete who has not changed at all.</summary>
    public Tally FalseClear { get; } = new();

    public void Add(SeasonChain chain)
    {
        var change = chain.Profile.Change(chain.Metric(Metric.Id), chain.Days[from], chain.Days[to]);
        foreach (var athlete in change.Athletes)
        {
            if (athlete.Interval is not { } interval || (Kind is { } wanted && wanted != KindOf(athlete))) continue;
            var player = chain.Players[athlete.AthleteId];
            var truth = Metric.Truth(player, player.On(to)) - Metric.Truth(player, player.On(from));
            Covered.Add(chain.Number, interval.Contains(truth));
            if (Metric.Unchanged(player, from, to)) FalseClear.Add(chain.Number, athlete.Verdict.IsClear());
        }
    }

    /// <summary>An estimated 1RM knows an error of its own, a measured one does not.</summary>
    private static LiftPair KindOf(AthleteChange change) => (change.Before.StandardError.HasValue, change.After.StandardError.HasValue) switch
    {
        (false, false) => LiftPair.BothMeasured,
        (true, true) => LiftPair.BothEstimated,
        _ => LiftPair.OneOfEach,
    };
}

/// <summary>How two 1RMs that are compared were come by.</summary>
public enum LiftPair
{
    BothMeasured,
    OneOfEach,
    BothEstimated,
}
