using Analytics.Simulation.Demo.Testing;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Squad;

/// <summary>Draws how an athlete responds to the season.</summary>
public static class Response
{
    /// <summary>Relative gain over the season in every quality.</summary>
    public static IReadOnlyDictionary<TrainedQuality, double> Draw(ulong seed, int index, DemoOptions options)
    {
        var random = RandomNumbers.For(seed, "response", index);
        var gains = new Dictionary<TrainedQuality, double>();
        foreach (var quality in Enum.GetValues<TrainedQuality>())
        {
            var share = random.Uniform();
            var size = random.Normal();
            gains[quality] = options.Changes switch
            {
                ChangePlan.None => 0,
                ChangePlan.TypicalErrors => Sign(quality) * InTypicalErrors(share) * TestNoise.DayScoreError(quality),
                _ => share < SquadResponse.UnchangedShare ? 0 : Trained(SquadResponse.Of(quality), size),
            };
        }

        foreach (var link in options.Links) link.MixGains(gains);
        return gains;
    }

    /// <summary>Share of the gain reached by each day. Baseline and retest share the first value.</summary>
    public static IReadOnlyList<double> DrawPath(ulong seed, int index, DemoOptions options)
    {
        if (options.Changes == ChangePlan.TypicalErrors) return options.WithEndRetest ? [0, 0, 0, 0, 1, 1] : [0, 0, 0, 0, 1];
        var random = RandomNumbers.For(seed, "path", index);
        var march = 0.25 + 0.2 * random.Uniform();
        var april = march + (1 - march) * (0.35 + 0.2 * random.Uniform());
        // An injured athlete gains nothing in the weeks he is out.
        if (options.WithMess && Mess.Availability.HurtInSpring(index)) april = march;
        return options.WithEndRetest ? [0, 0, march, april, 1, 1] : [0, 0, march, april, 1];
    }

    private static double Trained(SquadResponse response, double score) => response.Mean + response.Deviation * score;

    /// <summary>A much shorter time constant would give early splits that no one can run, so there the change is a loss.</summary>
    private static int Sign(TrainedQuality quality) => quality == TrainedQuality.TimeConstant ? -1 : 1;

    private static double InTypicalErrors(double share) => share switch
    {
        < 1.0 / 3 => 0,
        < 2.0 / 3 => ErrorSize.Small,
        _ => ErrorSize.Large,
    };
}
