using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;

namespace Analytics.Simulation.ErrorRates;

/// <summary>The interval of a day's value against true ability: does one test tell what an athlete can do?</summary>
/// <param name="metric">The metric.</param>
/// <param name="day">Testing day.</param>
public sealed class DayValueRates(JudgedMetric metric, int day)
{
    private double _miss, _error;

    public JudgedMetric Metric { get; } = metric;

    /// <summary>Only values that rest on no equation: heaviest singles, not estimates.</summary>
    public bool MeasuredOnly { get; init; }

    /// <summary>Taken off the truth: a heaviest single stops at a step of the bar, half a step low on average; in the metric's unit.</summary>
    public double HalfStep { get; init; }

    /// <summary>The same metric made another way than the library does; null for the library's way.</summary>
    public Func<Metric, Metric>? Remade { get; init; }

    /// <summary>How a row differs from the plain metric; empty when it does not.</summary>
    public string Remark { get; init; } = "";

    public Tally Covered { get; } = new();

    /// <summary>Value less ability, % of it, mean over athletes.</summary>
    public double BiasPercent => 100 * _miss / Covered.Asked;

    /// <summary>Typical error the seasons found, % of the value, mean over athletes.</summary>
    public double TypicalErrorPercent => 100 * _error / Covered.Asked;

    public void Add(SeasonChain chain)
    {
        var metric = chain.Metric(Metric.Id);
        var values = MetricDay.Of(Remade is null ? metric : Remade(metric), chain.Days[day]);
        var reliability = MetricReliability.Of(values.Metric, values.Series, chain.Profile.Retests, []);
        foreach (var value in values.Values)
        {
            if ((MeasuredOnly && value.Equation is not null) || value.Interval(reliability) is not { } interval) continue;
            var player = chain.Players[value.AthleteId];
            var truth = Metric.Truth(player, player.On(day)) - HalfStep;
            Covered.Add(chain.Number, interval.Interval.Contains(truth));
            _miss += (value.Value - truth) / truth;
            _error += reliability.ErrorAt(value.Value)!.Value / value.Value;
        }
    }
}
