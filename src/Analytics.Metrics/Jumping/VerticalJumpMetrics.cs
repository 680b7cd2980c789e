using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Jumping;

/// <summary>Metrics of vertical jumps from standing.</summary>
public static class VerticalJumpMetrics
{
    private const string BestOfJump = "A maximal test: the best jump is the one norms and power formulas are made for. "
        + "A best-of grows with the number of attempts, so give everyone the same number.";

    /// <summary>Countermovement jump height.</summary>
    public static Metric CountermovementHeight { get; } = Height(JumpKind.Countermovement) with
    {
        Id = "cmj_height",
        Label = "Countermovement jump height",
        Meaning = "How high the body rises after a dip and drive; explosive leg power that carries the body's own mass.",
        Sources = ["linthorne2001", "baumgart2017", "souza2020"],
        // 41 active men, force plate, 2 to 7 days apart.
        PublishedError = new(5.8, null, "souza2020", Athletes: 41),
    };

    /// <summary>Squat jump height.</summary>
    public static Metric SquatHeight { get; } = Height(JumpKind.Squat) with
    {
        Id = "sj_height",
        Label = "Squat jump height",
        Meaning = "How high the body rises from a held squat, without the help of a dip.",
        Sources = ["linthorne2001", "markovic2004"],
    };

    /// <summary>Peak power of a countermovement jump by <see cref="JumpPowerFormulas.Default"/>.</summary>
    public static Metric CountermovementPeakPower { get; } = new()
    {
        Id = "cmj_peak_power",
        Label = "Countermovement jump peak power",
        Unit = "W",
        Decimals = 0,
        Better = Direction.Higher,
        Quality = Quality.ExplosivePower,
        Rule = TrialRule.Best,
        RuleReason = BestOfJump,
        FromTrials = PeakPower,
        PlausibleLow = 1000,
        PlausibleHigh = 12000,
        Meaning = "Highest power of the push-off, estimated from jump height and body mass; it rewards mass that jumps.",
        Formula = "P [W] = 63.6·h [cm] + 42.7·m [kg] − 1846.5 (Amonette); the standard error is that between persons, 250.7 W, and largely cancels in a person's own change",
        Sources = ["amonette2012", "canavan2004"],
    };

    private static Metric Height(JumpKind kind) => new()
    {
        Id = "",
        Label = "",
        Unit = "cm",
        Decimals = 1,
        Better = Direction.Higher,
        Quality = Quality.ExplosivePower,
        Rule = TrialRule.Best,
        RuleReason = BestOfJump,
        FromTrials = day => Readings(day, kind).Select(r => new TrialValue(r.Height.Centimetres, Series: r.Series, Doubt: r.Doubt)),
        PlausibleLow = 10,
        PlausibleHigh = 120,
        Meaning = "",
        Formula = "h [cm] as the device reads it, else 100·g·t²/8 with flight time t [s], g = 9.81 m/s²; each method is its own series",
        Sources = [],
    };

    private static IEnumerable<JumpReading> Readings(AthleteDay day, JumpKind kind)
        => day.Of<JumpTrial>().Where(j => j.Kind == kind).Select(JumpReading.From).OfType<JumpReading>();

    private static IEnumerable<TrialValue> PeakPower(AthleteDay day)
    {
        if (day.BodyMass is not { } mass || mass.Kilograms <= 0) yield break;
        foreach (var jump in Readings(day, JumpKind.Countermovement))
        {
            var power = JumpPowerFormulas.Default.Estimate(jump.Height, mass);
            var remarks = new[] { jump.Doubt, power.Doubt, BodyMassAge.Remark(day) }.Where(d => d is not null);
            var doubt = string.Join("; ", remarks);
            yield return new(power.Power.Watts, power.Formula.StandardErrorWatts, jump.Series, doubt.Length == 0 ? null : doubt);
        }
    }
}
