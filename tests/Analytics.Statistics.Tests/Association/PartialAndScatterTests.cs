using Analytics.Statistics.Association;
using static Analytics.Statistics.Tests.Association.TransferOracle;

namespace Analytics.Statistics.Tests.Association;

public sealed class PartialAndScatterTests
{
    private const string File = "transfer-background.csv";
    private static readonly double[] s_x = Oracle.Column(File, 3), s_y = Oracle.Column(File, 4);
    private static readonly double[][] s_others = [Oracle.Column(File, 0), Oracle.Column(File, 1), Oracle.Column(File, 2)];

    [Fact]
    public void Partial_correlation_is_that_of_the_rests_of_two_regressions()
    {
        var told = PartialCorrelation.Of(s_x, s_y, s_others);
        Oracle.Close(Value("partial", "r"), told.Value);
        Oracle.Close(Value("partial", "low"), told.Interval!.Value.Low);
        Oracle.Close(Value("partial", "high"), told.Interval!.Value.High);
        Oracle.Close(Value("partial", "from_others"), told.FromOthers, 1e-9);
        Oracle.Close(Value("partial", "whole"), told.Whole);
        Assert.Equal((24, 3), (told.N, told.Others));
    }

    [Fact]
    public void A_column_said_twice_counts_once()
    {
        var twice = PartialCorrelation.Of(s_x, s_y, [.. s_others, [.. s_others[0].Select(v => 3 * v - 7)]]);
        Oracle.Close(Value("partial", "r"), twice.Value, 1e-9);
        Assert.Equal(3, twice.Others);
    }

    [Fact]
    public void Columns_that_predict_everything_are_refused()
        => Assert.Contains("nothing is left", Assert.Throws<ArgumentException>(() => PartialCorrelation.Of(s_x, s_y, [s_x])).Message, StringComparison.Ordinal);

    [Fact]
    public void Slope_takes_error_variance_and_covariance_off()
    {
        var told = SlopeWithScatter.Of(s_x, s_y, 8, 1.5, 15);
        Oracle.Close(Value("scatter", "slope"), told.Slope!.Value);
        Oracle.Close(Value("scatter", "error"), told.SlopeError!.Value, 1e-9);
        Oracle.Close(Value("scatter", "low"), told.Interval!.Value.Low, 1e-9);
        Oracle.Close(Value("scatter", "high"), told.Interval!.Value.High, 1e-9);
        Oracle.Close(Value("scatter", "spread_p"), told.SpreadP, 1e-8);
        Oracle.Close(Value("scatter", "true_sd"), told.TrueSpread!.Value);
        Assert.Equal(Value("scatter", "spread_p_known"), SlopeWithScatter.Of(s_x, s_y, 8, 1.5).SpreadP, 1e-10);
    }

    [Fact]
    public void A_spread_that_may_be_error_alone_gives_no_slope()
    {
        var told = SlopeWithScatter.Of(s_x, s_y, 28, 1.5, 15);
        Assert.Null(told.Slope);
        Assert.Null(told.Interval);
        Assert.Contains("the slope cannot be told", told.ToString(), StringComparison.Ordinal);
    }
}
