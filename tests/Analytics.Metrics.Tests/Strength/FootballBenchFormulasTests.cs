using Analytics.Metrics.Strength;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

public class FootballBenchFormulasTests
{
    private static readonly Mass Load = Mass.FromPounds(225);

    // Mayhew et al. 1999, coefficients from memory: soft. The rows agree to rounding because both sides state the same equation;
    // what is checked against print is below.
    [Fact]
    public void Mayhew_Repetitions_AgreesWithTheTable()
    {
        var rows = OracleTable.Read("strength/football_bench_225_lb.csv");
        Assert.Equal(7, rows.Count);
        Assert.All(rows, row => Assert.Equal(row["one_rep_max_lb"], FootballBenchFormulas.Mayhew.Estimate(Load, row["repetitions"]).Pounds, 1e-9));
    }

    // Printed for 51 Division II players: 12.3 repetitions, 310.0 lb measured. The equation's own error is 14.1 lb: soft, 10 lb.
    [Fact]
    public void Mayhew_MeanOfAPublishedSample_IsNearTheMeasuredMean()
        => Assert.Equal(310.0, FootballBenchFormulas.Mayhew.Estimate(Load, 12.3).Pounds, 10.0);

    [Fact]
    public void Hetzler_ArmMeasuresAndRepetitions_AgreesWithTheTable()
    {
        var rows = OracleTable.Read("strength/hetzler_225_lb.csv");
        Assert.Equal(3, rows.Count);
        Assert.All(rows, row => Assert.Equal(
            row["one_rep_max_lb"],
            Hetzler(row["arm_girth_cm"], row["arm_length_cm"]).Estimate(Load, row["repetitions"]).Pounds, 1e-9));
    }

    // Printed sample means of the 87 players: 140.5 kg at 14.1 repetitions. An arm of 38 cm girth and 36 cm length gives it back.
    [Fact]
    public void Hetzler_SampleMeans_GiveTheSampleMean()
        => Assert.Equal(140.5, Hetzler(38, 36).Estimate(Load, 14.1).Kilograms, 0.1);

    // With a whole-arm length of 75 cm the printed equation would give 140 lb to a man who did 15 repetitions with 225 lb.
    [Theory]
    [InlineData(40, 75, "upperArmLength", "28 to 45 cm; got 75 cm")]
    [InlineData(40, 27.9, "upperArmLength", "got 27.9 cm")]
    [InlineData(19.9, 36, "armCircumference", "20 to 60 cm; got 19.9 cm")]
    [InlineData(60.1, 36, "armCircumference", "got 60.1 cm")]
    public void Hetzler_MeasureOutOfRange_IsRefused(double girth, double length, string parameter, string text)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Hetzler(girth, length));

        Assert.Equal(parameter, error.ParamName);
        Assert.Contains(text, error.Message, StringComparison.Ordinal);
    }

    private static OneRepMaxFormula Hetzler(double girth, double length)
        => FootballBenchFormulas.Hetzler(Length.FromCentimetres(girth), Length.FromCentimetres(length));
}
