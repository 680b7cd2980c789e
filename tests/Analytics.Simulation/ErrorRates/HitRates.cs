using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Demo.Testing;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates;

/// <summary>Clear verdicts for athletes who truly changed by a known number of typical errors between the last two days.</summary>
/// <param name="metric">A metric that rests on one quality.</param>
/// <param name="size">Size of the true change in typical errors.</param>
public sealed class HitRates(JudgedMetric metric, double size)
{
    private double _size, _worthwhile, _degrees;
    private VerdictRule? _rule;

    public JudgedMetric Metric { get; } = metric;

    public double NominalSize { get; } = size;

    /// <summary>Clear verdict in the direction of the true change.</summary>
    public Tally Hit { get; } = new();

    /// <summary>Clear verdict against it.</summary>
    public Tally WrongWay { get; } = new();

    /// <summary>Mean true change over the typical error the season found.</summary>
    public double Size => _size / Hit.Asked;

    /// <summary>Clear verdicts the rule's own closed form expects at <see cref="Size"/>.</summary>
    public double Expected => _rule!.ClearRate(Size, _worthwhile / Hit.Asked, _degrees / Hit.Asked);

    public void Add(SeasonChain chain)
    {
        const int from = SeasonCalendar.April, to = SeasonCalendar.June;
        var change = chain.Profile.Change(chain.Metric(Metric.Id), chain.Days[from], chain.Days[to]);
        _rule = change.Rule;
        foreach (var athlete in change.Athletes)
        {
            var player = chain.Players[athlete.AthleteId];
            if (athlete.Change is null || Math.Abs(SizeOf(player) - NominalSize) > 1e-6) continue;
            var truth = Metric.Truth(player, player.On(to)) - Metric.Truth(player, player.On(from));
            var error = athlete.Change.StandardError / Math.Sqrt(2);
            Hit.Add(chain.Number, athlete.Verdict.IsClear() && athlete.Difference > 0 == truth > 0);
            WrongWay.Add(chain.Number, athlete.Verdict.IsClear() && athlete.Difference > 0 != truth > 0);
            _size += Math.Abs(truth) / error;
            _worthwhile += (change.Worthwhile.Value ?? 0) / error;
            _degrees += athlete.Change.DegreesOfFreedom;
        }
    }

    private double SizeOf(Player player) => Math.Abs(player.SeasonGain[Metric.Qualities[0]]) / TestNoise.DayScoreError(Metric.Qualities[0]);
}
