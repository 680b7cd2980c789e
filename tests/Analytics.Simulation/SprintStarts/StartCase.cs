using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Sprinting.Curve;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.SprintStarts;

/// <summary>One kind of start with a known truth, timed and read as a report reads it.</summary>
/// <param name="Start">What the trial says started the clock.</param>
/// <param name="Yards">Gates.</param>
/// <param name="RunInMetres">Run before the clock started; the truth is a mono-exponential run from rest.</param>
/// <param name="LateSeconds">Time on the clock before the first movement.</param>
/// <param name="TimingSd">SD of the timing error, s.</param>
internal sealed record StartCase(StartType Start, double[] Yards, double RunInMetres, double LateSeconds, double TimingSd)
{
    private const int SquadSize = 40;

    private static readonly Length TenYards = Length.FromYards(10);

    /// <summary>Simulates squads and tallies how the fitted values miss the truth.</summary>
    public StartTally Run(ulong seed, int squads)
    {
        var tally = new StartTally();
        for (var squad = 0; squad < squads; squad++)
        {
            var random = RandomNumbers.For(seed, "sprint starts", squad);
            MonoExponential[] truth = [.. Enumerable.Range(0, SquadSize).Select(_ => new MonoExponential(
                Speed.FromMetresPerSecond(8.5 + (0.5 * random.Normal())), Duration.FromSeconds(Math.Max(0.8, 1.1 + (0.1 * random.Normal())))))];
            var readings = SprintReading.OfSquad(truth.Select(run => Trial(run, random)));
            for (var i = 0; i < truth.Length; i++)
            {
                if (readings[i].Fit.Curve is not { } curve) continue;
                tally.Count(readings[i].Fit.Start);
                tally.TopSpeed.Add(curve.TopSpeed, truth[i].TopSpeed.MetresPerSecond);
                tally.TimeConstant.Add(curve.TimeConstant, truth[i].TimeConstant.Seconds);
                tally.SpeedAtTenYards.Add(curve.SpeedAt(TenYards), truth[i].SpeedAt(TenYards + RunIn).MetresPerSecond);
            }
        }
        return tally;
    }

    private Length RunIn => Length.FromMetres(RunInMetres);

    private SprintTrial Trial(MonoExponential run, RandomNumbers random) => new()
    {
        AthleteId = "simulated",
        Date = new(2026, 1, 1),
        Timing = TimingMethod.Electronic,
        Start = Start,
        Splits = [.. Yards.Select(yards => new Split(Length.FromYards(yards), Duration.FromSeconds(
            (run.TimeTo(Length.FromYards(yards) + RunIn) - run.TimeTo(RunIn)).Seconds + LateSeconds + (TimingSd * random.Normal()))))],
    };
}
