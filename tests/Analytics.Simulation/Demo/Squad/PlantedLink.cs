using Analytics.Simulation.Demo.Testing;

namespace Analytics.Simulation.Demo.Squad;

/// <summary>
/// A correlation planted on purpose between a weight-room quality and what it is said to serve. Means and spreads of all gains stay; "exactly no change" in the
/// field qualities does not.
/// </summary>
/// <param name="WeightRoom">The weight-room quality.</param>
/// <param name="Correlation">Correlation of its gain with the field result's, −1 to 1.</param>
/// <param name="WithForm">Whether the forms of the day are given the same correlation, in place of the little they have anyway.</param>
/// <param name="Field">
/// The qualities behind the field result, each with the SD its gain gives to the result (any common unit): the sum of the parts has the correlation.
/// </param>
public sealed record PlantedLink(TrainedQuality WeightRoom, double Correlation, bool WithForm, params IReadOnlyList<(TrainedQuality Quality, double Part)> Field)
{
    /// <summary>Gains with the link in them.</summary>
    public void MixGains(Dictionary<TrainedQuality, double> gains)
    {
        var from = SquadResponse.Of(WeightRoom);
        var score = (gains[WeightRoom] - from.OverallMean) / from.OverallDeviation;
        foreach (var (quality, part) in Field)
        {
            var (to, load) = (SquadResponse.Of(quality), Load(part));
            var own = (gains[quality] - to.OverallMean) / to.OverallDeviation;
            gains[quality] = to.OverallMean + to.OverallDeviation * (load * score + Math.Sqrt(1 - load * load) * own);
        }
    }

    /// <summary>Forms with the link in them; they correlate by <paramref name="already"/> before.</summary>
    public void MixForms(Dictionary<TrainedQuality, double> scores, double already)
    {
        if (!WithForm) return;
        foreach (var (quality, part) in Field)
        {
            var own = (scores[quality] - already * scores[WeightRoom]) / Math.Sqrt(1 - already * already);
            var load = Load(part);
            scores[quality] = load * scores[WeightRoom] + Math.Sqrt(1 - load * load) * own;
        }
    }

    // The loads λ u of parts with unit vector u make the sum correlate by λ/√(1 + λ² Σ u²v²) over different parts.
    private double Load(double part)
    {
        var all = Field.Sum(f => f.Part * f.Part);
        double Share(double p) => p * p / all;
        var cross = 1 - Field.Sum(f => Share(f.Part) * Share(f.Part));
        return Correlation / Math.Sqrt(1 - Correlation * Correlation * cross) * part / Math.Sqrt(all);
    }
}
