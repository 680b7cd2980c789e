using Analytics.Metrics.Seasons;
using Analytics.Simulation.ErrorRates;
using Analytics.Statistics;
using Analytics.Statistics.Summaries;

namespace Analytics.Simulation.SeasonStudy.Courses;

/// <summary>How the interval of the SD of responses of one metric fares.</summary>
public sealed class SpreadRates(string metricId)
{
    private readonly List<(int Season, Interval Variance)> _intervals = [];
    private readonly List<double> _estimates = [], _trueVariances = [];

    public string MetricId { get; } = metricId;

    /// <summary>Against the SD of the true changes of the very athletes.</summary>
    public Tally These { get; } = new();

    /// <summary>Against the SD of true changes in the population athletes are drawn from (root of the mean variance over seasons).</summary>
    public Tally Population
    {
        get
        {
            var (tally, truth) = (new Tally(), _trueVariances.Average());
            foreach (var (season, interval) in _intervals) tally.Add(season, interval.Contains(truth));
            return tally;
        }
    }

    /// <summary>Root of the mean estimated variance over root of the mean true variance.</summary>
    public double Ratio => Math.Sqrt(Math.Max(0, _estimates.Average()) / _trueVariances.Average());

    public void Add(SeasonChain chain, SeasonMeasures.Measure measure)
    {
        var change = measure.Change;
        if (ResponseSpread.Of(change).Responses is not { } responses) return;
        var truth = Moments.Variance([.. change.Athletes.Where(a => a.IsWholeSeason).Select(a => measure.TrueChange(a.AthleteId, a.Baseline.Value.Date, a.Last.Value.Date))]);
        These.Add(chain.Number, responses.VarianceInterval.Contains(truth));
        _intervals.Add((chain.Number, responses.VarianceInterval));
        _estimates.Add(responses.Variance);
        _trueVariances.Add(truth);
    }
}
