using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Sprinting;

/// <summary>Times at the usual gates. A day without that gate has no value.</summary>
internal static class SplitTimeMetrics
{
    private const string BestRun = "A maximal run: the fastest time is the trade's habit. A best-of gets faster with more runs, so give everyone the same number.";

    public static IEnumerable<Metric> All(SplitErrorPools? pools) =>
    [
        Yards(10, Quality.Acceleration, 1.2, 2.6, pools) with { PublishedError = BetweenDays(3.1) },
        Yards(20, Quality.Acceleration, 2.1, 4.2, pools) with { PublishedError = BetweenDays(1.8) },
        Yards(40, Quality.MaximalSpeed, 4.0, 7.5, pools) with { PublishedError = BetweenDays(1.3) },
        Metres(10, Quality.Acceleration, 1.3, 2.8) with { PublishedError = BetweenDays(3.1) },
        Metres(20, Quality.Acceleration, 2.3, 4.6) with { PublishedError = BetweenDays(1.8) },
        Metres(40, Quality.MaximalSpeed, 4.3, 8.2) with { PublishedError = BetweenDays(1.3) },
    ];

    // 28 rugby players, two sessions three days apart, single-beam gates; the yard gate takes the figure of the nearest metre gate.
    // Figures from runs of one session (1.2 % at 10 m, 0.85 % at 20 m [cronin2008]) leave out the day and are not carried.
    private static PublishedError BetweenDays(double percent) => new(percent, null, "darralljones2016", Athletes: 28, Series: "electronic");

    private static Metric Yards(int yards, Quality quality, double low, double high, SplitErrorPools? pools)
    {
        var gate = Length.FromYards(yards);
        return Time($"{yards}yd", $"{yards} yd", quality, low, high) with
        {
            FromTrials = day => day.Of<SprintTrial>().SelectMany(t => At(t, gate).Concat(Predicted(t, gate, yards, pools))),
            Formula = "time at the gate; where only other gates stand on both sides of it, the fitted curve's time, marked as predicted",
        };
    }

    private static Metric Metres(int metres, Quality quality, double low, double high)
    {
        var gate = Length.FromMetres(metres);
        return Time($"{metres}m", $"{metres} m", quality, low, high) with
        {
            FromTrials = day => day.Of<SprintTrial>().SelectMany(t => At(t, gate)),
        };
    }

    private static Metric Time(string id, string distance, Quality quality, double low, double high) => new()
    {
        Id = $"sprint_{id}",
        Label = $"{distance} sprint",
        Unit = "s",
        Decimals = 2,
        Better = Direction.Lower,
        Quality = quality,
        Rule = TrialRule.Best,
        RuleReason = BestRun,
        FromTrials = _ => [],
        PlausibleLow = low,
        PlausibleHigh = high,
        Meaning = $"Time from the start of the clock to {distance}.",
        Formula = "time at the gate",
        Sources = ["haugen2016", "mann2015"],
    };

    private static IEnumerable<TrialValue> At(SprintTrial trial, Length gate)
    {
        if (trial.TimeAt(gate) is { } time)
            yield return new(time.Seconds, null, SprintSeries.Of(trial.Timing, trial.Start));
    }

    // Between gates only: beyond the last gate the curve would be guessing.
    private static IEnumerable<TrialValue> Predicted(SprintTrial trial, Length gate, int yards, SplitErrorPools? pools)
    {
        if (trial.TimeAt(gate) is not null || trial.Splits.Count == 0
            || trial.Splits[0].Distance > gate || trial.Splits[^1].Distance < gate) yield break;
        var reading = SprintFitMetrics.Read(trial, pools);
        if (reading.Fit.Curve is not { } curve) yield break;
        var time = curve.TimeAt(gate);
        var gates = string.Join(", ", trial.Splits.Select(s => s.Distance.Metres.ToString("0.##", CultureInfo.InvariantCulture)));
        yield return new(time.Value, time.StandardError, reading.Series,
            string.Create(CultureInfo.InvariantCulture, $"predicted from the fitted curve: no gate at {yards} yd, gates at {gates} m"), curve.DegreesOfFreedom);
    }
}
