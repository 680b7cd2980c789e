using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Transfer;
using Analytics.Simulation.Demo;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.SeasonStudy.Transfer;

/// <summary>What the study of transfer is worth: false findings, power, coverage.</summary>
public sealed class TransferSection : IStudySection
{
    private static readonly string[] s_weightRoom = ["back_squat_1rm", "bench_press_1rm", "power_clean_1rm"];
    private static readonly string[] s_field = ["sprint_10yd", "max_speed", "cmj_height", "pro_agility"];

    private readonly Dictionary<Scenario, Dictionary<(string, string), TransferCount>> _counts;

    public TransferSection() => _counts = Scenarios.ToDictionary(s => s, _ => TransferCase.Watched.ToDictionary(w => w, _ => new TransferCount()));

    /// <inheritdoc/>
    public IReadOnlyList<Scenario> Scenarios { get; } =
    [
        .. from correlation in (double[])[0, 0.6]
           from kind in ((bool WithForm, bool WithMess, bool WithEndRetest)[])[(false, false, false), (false, true, false), (true, true, false), (false, false, true), (false, true, true)]
           select TransferCase.Scenario(correlation, kind.WithForm, kind.WithMess, kind.WithEndRetest),
    ];

    /// <summary>The counts of one kind of season.</summary>
    public IReadOnlyDictionary<(string WeightRoom, string Field), TransferCount> Of(Scenario scenario) => _counts[scenario];

    /// <inheritdoc/>
    public void Add(Scenario scenario, SeasonChain chain)
    {
        var backgrounds = chain.Season.Athletes.ToDictionary(a => a.Id, a => new AthleteBackground(a.TrainingYears, a.BirthYear), StringComparer.Ordinal);
        var study = TransferStudy.Of(
            chain.Profile, (List<Metric>)[.. s_weightRoom.Select(chain.Metric)], [.. s_field.Select(chain.Metric)], chain.Days, backgrounds);
        foreach (var (key, count) in _counts[scenario])
        {
            var (r, slope) = Truth(chain, key.Item1, key.Item2);
            count.Add(chain.Number, study.Pair(key.Item1, key.Item2)!, r, slope);
        }
    }

    /// <inheritdoc/>
    public string Write() => TransferDocument.Of(Scenarios, _counts);

    /// <summary>Correlation and slope of the true gains over the season, in the metrics' units, gains positive.</summary>
    private static (double R, double Slope) Truth(SeasonChain chain, string weightRoom, string field)
    {
        double[] Gains(string id)
        {
            var (judged, sense) = (JudgedMetric.Get(id), chain.Metric(id).Better == Direction.Lower ? -1 : 1);
            return [.. chain.Truth.Players.Select(p => sense * (judged.Truth(p, p.On(SeasonCalendar.June)) - judged.Truth(p, p.On(SeasonCalendar.Baseline))))];
        }

        double[] x = Gains(weightRoom), y = Gains(field);
        var (mx, my) = (x.Average(), y.Average());
        double xx = x.Sum(v => (v - mx) * (v - mx)), yy = y.Sum(v => (v - my) * (v - my)), xy = x.Zip(y, (a, b) => (a - mx) * (b - my)).Sum();
        return (xy / Math.Sqrt(xx * yy), xy / xx);
    }
}
