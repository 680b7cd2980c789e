using Analytics.Statistics.MixedModels;

namespace Analytics.Statistics.Tests.MixedModels;

/// <summary>Means of athletes themselves and weighted rows, against lme4, lmerTest and the mixed-model equations in R.</summary>
public class OwnLevelsTests
{
    private static readonly Dictionary<string, double> s_expected = Oracle.Rows("season-trend-expected.csv").ToDictionary(r => r[0], r => Oracle.Number(r[1]));

    private static readonly IReadOnlyList<TrendRow> s_rows =
    [
        .. Oracle.Rows("season-trend.csv").Select(r => new TrendRow(r[0], r[1], Oracle.Number(r[2]), Oracle.Number(r[3])) { Weight = Oracle.Number(r[4]) }),
    ];

    private static readonly SquadTrend s_trend = SquadTrend.Of(s_rows, "log squat");

    public static TheoryData<string, string?> Courses => new() { { "squad_all", null }, { "groups_backs", "backs" }, { "groups_line", "line" } };

    // lmer stops near 1e-6 in its parameters, so errors agree to about that and degrees of freedom to less.
    [Theory]
    [MemberData(nameof(Courses))]
    public void SquadTrend_WeightedRows_AgreesWithR(string name, string? group)
    {
        var means = s_trend.Squad.Concat(s_trend.Groups).Where(m => m.Group == group).ToList();
        Assert.Equal([0.0, 42, 84, 140], means.Select(m => m.Day));
        foreach (var mean in means)
        {
            double Expected(string what) => s_expected[FormattableString.Invariant($"{name}_{mean.Day}_{what}")];
            Oracle.Close(Expected("mean"), mean.Mean.Value, 1e-5);
            Oracle.Close(Expected("mean_se"), mean.Mean.StandardError, 1e-3);
            Oracle.Close(Expected("mean_df"), mean.Mean.DegreesOfFreedom, 1e-2);
            Oracle.Close(Expected("own"), mean.Own.Mean.Value, 1e-5);
            Oracle.Close(Expected("own_se"), mean.Own.Mean.StandardError, 1e-3);
            if (mean.SinceFirst is not { } change) continue;
            Oracle.Close(Expected("change"), change.Value, 1e-3);
            Oracle.Close(Expected("change_se"), change.StandardError, 1e-3);
            Oracle.Close(Expected("change_df"), change.DegreesOfFreedom, 1e-2);
            Oracle.Close(Expected("own_change"), mean.Own.SinceFirst!.Value, 1e-3);
            Oracle.Close(Expected("own_change_se"), mean.Own.SinceFirst.StandardError, 1e-3);
        }
    }

    [Theory]
    [InlineData("squad", null)]
    [InlineData("groups", "line")]
    public void OwnLevels_DegreesOfFreedom_AreThoseOfTheResidualVariance(string name, string? group)
        => Oracle.Close(s_expected[name + "_df_residual"], s_trend.Squad.Concat(s_trend.Groups).First(m => m.Group == group).Own.Mean.DegreesOfFreedom, 1e-2);

    [Fact]
    public void Weighted_Likelihood_AgreesWithR()
    {
        var model = ModelDesign.Of([.. s_rows.Select(r => r.Value)], [.. s_rows.Select(r => r.Athlete)]).WithoutIntercept()
            .Factor("cell", [.. s_rows.Select(r => r.Day.ToString("000", System.Globalization.CultureInfo.InvariantCulture))])
            .RandomIntercept().RandomSlope("day", [.. s_rows.Select(r => r.Day)]).Weighted([.. s_rows.Select(r => r.Weight)]).Fit().Require();
        Oracle.Close(s_expected["squad_minus2logLik"], model.MinusTwoLogLikelihood, 1e-6);
        Oracle.Close(s_expected["squad_sigma"], Math.Sqrt(model.ResidualVariance), 1e-3);
        // A residual is what the fit leaves of the row itself, in its own order.
        Assert.All(model.FittedValues().Zip(model.Residuals(), s_rows), p => Assert.Equal(p.Third.Value, p.First + p.Second, 9));
        // A fitted value lies near its response whatever its weight: six residual SDs of a row of weight 0.4 are 0.2.
        Assert.All(model.Residuals(), r => Assert.InRange(r, -0.2, 0.2));
    }

    // Complete pairs: error √(2/n) times the residual SD, n − 1 degrees of freedom, as in a paired t test by hand: differences 1, 2, 3, 6, mean 3, SD 2.1602.
    [Fact]
    public void Difference_CompletePairsAlike_IsThePairedTTest()
    {
        double[] before = [10, 20, 30, 40], after = [11, 22, 33, 46];
        TrendRow[] rows = [.. before.Select((v, i) => new TrendRow($"P{i}", "all", 0, v)), .. after.Select((v, i) => new TrendRow($"P{i}", "all", 1, v))];
        var change = SquadTrend.Of(rows).Squad[1].Own.SinceFirst!;
        // The search stops on the likelihood, so the variance agrees to about 1e-7 and its degrees of freedom to less.
        Oracle.Close(3, change.Value, 1e-9);
        Oracle.Close(1.0801234497346432, change.StandardError, 1e-7);
        Oracle.Close(3, change.DegreesOfFreedom, 1e-5);
    }

    [Fact]
    public void Weighted_BadWeight_IsRefusedInWords()
    {
        var design = ModelDesign.Of([1, 2, 3], ["a", "a", "b"]);
        Assert.Contains("weights", Assert.ThrowsAny<ArgumentException>(() => design.Weighted([1, 0, 1])).Message, StringComparison.Ordinal);
        Assert.ThrowsAny<ArgumentException>(() => design.Weighted([1, 1]));
    }

    [Fact]
    public void OwnLevels_UnknownOrRepeatedGroup_IsRefusedInWords()
    {
        var model = MixedExamples.SleepSlope().Fit().Require();
        Assert.Contains("'Nobody' is not among the 18 subjects", Assert.Throws<ArgumentException>(() => OwnLevels.Of(model, ["Nobody"])).Message, StringComparison.Ordinal);
        Assert.Contains("named twice", Assert.Throws<ArgumentException>(() => OwnLevels.Of(model, ["308", "308"])).Message, StringComparison.Ordinal);
        Assert.Contains("name at least one", Assert.Throws<ArgumentException>(() => OwnLevels.Of(model, [])).Message, StringComparison.Ordinal);
    }
}
