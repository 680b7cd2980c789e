using Analytics.Statistics.MixedModels;
using Analytics.Statistics.Reliability;
using Analytics.Statistics.Tests.Reliability;

namespace Analytics.Statistics.Tests.MixedModels;

public sealed class VarianceIccTests
{
    // Six targets, four judges [shroutfleiss1979]: ICC(1,1) .17 and ICC(3,1) .71 as printed, the same as from mean squares.
    [Fact]
    public void A_complete_table_gives_the_printed_correlations()
    {
        var rows = Oracle.Rows("shrout-fleiss-1979.csv").ToList();
        var values = rows.SelectMany(r => r.Skip(1).Select(Oracle.Number)).ToArray();
        var targets = rows.SelectMany(r => Enumerable.Repeat(r[0], 4)).ToArray();
        var judges = rows.SelectMany(_ => new[] { "1", "2", "3", "4" }).ToArray();
        var design = ModelDesign.Of(values, targets).RandomIntercept();
        var (one, three) = (VarianceIcc.Of(design.Fit().Require()), VarianceIcc.Of(design.Factor("judge", judges).Fit().Require()));
        Assert.Equal(0.17, one.Value, 0.005);
        Assert.Equal(0.71, three.Value, 0.005);
        var table = ReliabilityTables.Of("shrout_fleiss");
        Oracle.Close(IntraclassCorrelation.Of(table, IccForm.OneWaySingle).Value, one.Value, 1e-9);
        Oracle.Close(IntraclassCorrelation.Of(table).Value, three.Value, 1e-9);
        Assert.InRange(three.Interval.Low, 0.2, 0.5);
        Assert.InRange(three.Interval.High, 0.9, 0.99);
        Assert.Contains("ICC", three.ToString(), StringComparison.Ordinal);
    }

    // Missing trials: the variances are lme4's (mixed-expected.csv, case unbalanced_only).
    [Fact]
    public void Missing_trials_are_no_obstacle()
    {
        var icc = VarianceIcc.Of(MixedExamples.UnbalancedOnly().Fit().Require());
        var expected = Oracle.Rows("mixed-expected.csv").Where(r => r[0] == "unbalanced_only").ToDictionary(r => r[1], r => Oracle.Number(r[2]));
        Oracle.Close(expected["D11"] / (expected["D11"] + expected["var_residual"]), icc.Value, 1e-7);
        Assert.True(icc.Interval.Contains(icc.Value));
        Assert.InRange(icc.Interval.High - icc.Interval.Low, 0.05, 0.4);
    }
}
