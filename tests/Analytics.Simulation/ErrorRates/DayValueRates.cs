using Analytics.Metrics.Profile;
using Analytics.Statistics.Change;
using Analytics.Statistics.Distributions;

namespace Analytics.Simulation.ErrorRates;

/// <summary>A day's value plus or minus t times the season's typical error, against true ability: does one test tell what an athlete can do?</summary>
/// <param name="metric">The metric.</param>
/// <param name="day">Testing day.</param>
/// <param name="measured">Only values without an error of their own: heaviest singles, not estimates.</param>
/// <param name="halfStep">Taken off the truth: a heaviest single stops at a step of the bar, half a step low on average; in the metric's unit.</param>
public sealed class DayValueRates(JudgedMetric metric, int day, bool measured = false, double halfStep = 0)
{
    private double _miss;

    public JudgedMetric Metric { get; } = metric;

    public bool AgainstStep { get; } = halfStep > 0;

    public Tally Covered { get; } = new();

    /// <summary>Value less ability, % of it, mean over athletes.</summary>
    public double BiasPercent => 100 * _miss / Covered.Asked;

    public void Add(SeasonChain chain)
    {
        var values = MetricDay.Of(chain.Metric(Metric.Id), chain.Days[day]);
        var reliability = MetricReliability.Of(values.Metric, values.Series, chain.Profile.Retests, []);
        foreach (var value in values.Values)
        {
            if (measured && value.StandardError.HasValue) continue;
            var player = chain.Players[value.AthleteId];
            var truth = Metric.Truth(player, player.On(day)) - halfStep;
            var reach = StudentLaw.TwoSided(0.95, reliability.DegreesOfFreedom) * reliability.ErrorAt(value.Value)!.Value;
            Covered.Add(chain.Number, Math.Abs(value.Value - truth) <= reach);
            _miss += (value.Value - truth) / truth;
        }
    }
}
