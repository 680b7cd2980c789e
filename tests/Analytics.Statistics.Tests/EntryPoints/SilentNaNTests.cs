using Analytics.Statistics.Multiplicity;
using Analytics.Statistics.Reliability;
using Analytics.Statistics.Resampling;
using Analytics.Statistics.Summaries;
using Analytics.Statistics.Trends;

namespace Analytics.Statistics.Tests.EntryPoints;

/// <summary>Cases that once gave NaN or an error of the machinery, kept one by one.</summary>
public class SilentNaNTests
{
    [Fact]
    public void Bootstrap_LeaveOneOutThatDoesNotExist_GivesNoJackknife()
    {
        var made = Bootstrap.Correlation([1, 2, 4, 3, 7], [0.1, 0.1, 0.1, 0.1, 0.3], new() { Resamples = 200 });
        Assert.Null(made.JackknifeStandardError);
        Assert.Null(made.JackknifeBias);
        Assert.Null(made.AccelerationBy(Acceleration.CentredJackknife));
        Assert.Null(made.AccelerationBy(Acceleration.UncentredJackknife));
    }

    [Fact]
    public void TheilSen_TiesInBoth_ReachIsANumber() => Assert.Equal(0, TheilSen.Of([3, 1, 2, 2, 9], [0, 0, 0, 0, 0]).Reach);

    [Fact]
    public void Moments_SquaresThatOverflow_NamesTheValue()
        => Assert.Contains("values[1] is 1E+200; allowed: up to 1E+70 in size", Assert.Throws<ArgumentException>(() => Moments.Variance([1, 1e200])).Message, StringComparison.Ordinal);

    [Fact]
    public void VarianceComponents_NoValueAtAll_SaysSo()
        => Assert.Contains("0 of 2 athletes", Assert.Throws<ArgumentException>(() => VarianceComponents.Of(TrialTable.FromRows([[null, null], [null, null]]), IccForm.OneWaySingle)).Message, StringComparison.Ordinal);

    [Fact]
    public void ChanceFlags_TooManyComparisons_SaysSo()
        => Assert.Contains("are 4000000000 comparisons", Assert.Throws<ArgumentException>(() => ChanceFlags.OfSquad(2_000_000, 2_000, 0.05)).Message, StringComparison.Ordinal);

    [Fact]
    public void TrialTable_NullRow_SaysWhatToWrite()
        => Assert.Contains("write a row of nulls", Assert.Throws<ArgumentException>(() => TrialTable.FromRows([[1, 2], null!])).Message, StringComparison.Ordinal);

    [Fact]
    public void OfMean_NotANumber_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => IntraclassCorrelation.OfMean(double.NaN, 3));
}
