using Analytics.Statistics.Change;
using Analytics.Statistics.Tests.Reliability;

namespace Analytics.Statistics.Tests.Change;

public class MeanChangeTests
{
    [Theory]
    [InlineData("retest3", 0, 1)]
    [InlineData("retest3", 1, 2)]
    [InlineData("weir_A", 0, 1)]
    [InlineData("weir_B", 0, 1)]
    public void Of_EveryPairOfTrials_AgreesWithR(string name, int first, int second)
    {
        var change = MeanChange.Of(ReliabilityTables.Of(name).Differences(first, second));
        var pair = $"pair{first + 1}{second + 1}_";
        Oracle.Close(Oracle.Value(name, pair + "change"), change.Mean.Value);
        Oracle.Close(Oracle.Value(name, pair + "change_low"), change.Mean.Interval!.Value.Low);
        Oracle.Close(Oracle.Value(name, pair + "change_high"), change.Mean.Interval!.Value.High);
        Oracle.Close(Oracle.Value(name, pair + "sd_diff"), change.StandardDeviation!.Value);
        Oracle.Close(Oracle.Value(name, pair + "TE"), change.TypicalErrorIfAllChangedAlike!.Value);
    }

    [Fact]
    public void Of_OneAthlete_StatesNoError()
    {
        var change = MeanChange.Of([4]);
        Assert.Null(change.Mean.Interval);
        Assert.Null(change.StandardDeviation);
        Assert.Equal("single value, no error known", change.Mean.Method);
    }
}
