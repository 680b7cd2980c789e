using Analytics.Quantities;

namespace Analytics.Metrics.FieldPower;

/// <summary>Words of the textbook norms for stair power.</summary>
public enum StairBand
{
    /// <summary>Lowest band.</summary>
    Poor,

    /// <summary>Second band.</summary>
    Fair,

    /// <summary>Middle band.</summary>
    Average,

    /// <summary>Fourth band.</summary>
    Good,

    /// <summary>Highest band.</summary>
    Excellent,
}

/// <summary>General-population norms of one group.</summary>
/// <param name="Group">Who.</param>
/// <param name="CutPoints">Lower ends of fair, average and good, then the upper end of good; in kg·m/s, as the textbooks print them.</param>
public sealed record StairNorms(string Group, IReadOnlyList<double> CutPoints)
{
    /// <summary>
    /// The four groups of [fox1974], from memory. Not scaled for body mass, so a heavy player is "excellent" by weight alone:
    /// background for a conversation, not a judgement of a squad.
    /// </summary>
    public static IReadOnlyList<StairNorms> All { get; } =
    [
        new("men 15 to 20 years", [113, 150, 188, 224]),
        new("men 20 to 30 years", [106, 140, 176, 210]),
        new("women 15 to 20 years", [92, 121, 152, 182]),
        new("women 20 to 30 years", [85, 112, 141, 168]),
    ];

    /// <summary>The band a power falls in, after rounding to whole kg·m/s as the table does.</summary>
    /// <param name="power">Mean power up the stair.</param>
    public StairBand Band(Power power)
    {
        var x = Math.Round(power.Watts / Gravity.Published.MetresPerSecondSquared);
        return x < CutPoints[0] ? StairBand.Poor
            : x < CutPoints[1] ? StairBand.Fair
            : x < CutPoints[2] ? StairBand.Average
            : x <= CutPoints[3] ? StairBand.Good
            : StairBand.Excellent;
    }
}
