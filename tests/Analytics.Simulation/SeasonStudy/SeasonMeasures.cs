using System.Runtime.CompilerServices;
using Analytics.Metrics.Seasons;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.SeasonStudy;

/// <summary>What the season's methods make of a generated season, worked out once for all sections.</summary>
public sealed class SeasonMeasures
{
    private static readonly ConditionalWeakTable<SeasonChain, SeasonMeasures> s_made = [];

    private SeasonMeasures(SeasonChain chain) => All = [.. JudgedMetric.All.Select(m => new Measure(chain, m))];

    /// <summary>One a judged metric, in their order.</summary>
    public IReadOnlyList<Measure> All { get; }

    public static SeasonMeasures Of(SeasonChain chain) => s_made.GetValue(chain, c => new(c));

    /// <summary>One metric over one season.</summary>
    public sealed class Measure(SeasonChain chain, JudgedMetric metric)
    {
        private readonly Lazy<SeasonValues> _values = new(() => SeasonValues.Of(chain.Metric(metric.Id), chain.Days));
        private SeasonTrend? _trend;
        private SeasonChange? _change;

        public JudgedMetric Metric { get; } = metric;

        public SeasonValues Values => _values.Value;

        public SeasonTrend Trend => _trend ??= SeasonTrend.Of(chain.Profile, Values);

        public SeasonChange Change => _change ??= SeasonChange.Of(chain.Profile, Values);

        /// <summary>True change of an athlete between two testing dates, in the metric's unit.</summary>
        public double TrueChange(string athleteId, DateOnly from, DateOnly to)
        {
            var player = chain.Players[athleteId];
            return Metric.Truth(player, player.On(DayOf(to))) - Metric.Truth(player, player.On(DayOf(from)));
        }

        /// <summary>Whether nothing the metric rests on changed between two testing dates.</summary>
        public bool IsUnchanged(string athleteId, DateOnly from, DateOnly to) => Metric.Unchanged(chain.Players[athleteId], DayOf(from), DayOf(to));

        private static int DayOf(DateOnly date) => Demo.SeasonCalendar.TestingDays.ToList().IndexOf(date);
    }
}
