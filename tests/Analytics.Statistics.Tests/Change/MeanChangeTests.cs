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

    // R: differences 1 2 4 5 give SE² 0.833333 with 3 degrees; a shared 0.5 makes SE 1.04083299973 with 5.07 degrees, reach 2.66447363148.
    [Theory]
    [InlineData(0.5)]
    [InlineData(-0.5)]
    public void WithSharedError_FourAthletes_WidensTheInterval(double shared)
    {
        var change = MeanChange.Of([1, 2, 4, 5]).WithSharedError(shared);
        Oracle.Close(1.04083299973, change.Mean.StandardError!.Value, 1e-10);
        Oracle.Close(3 - 2.66447363148, change.Mean.Interval!.Value.Low, 1e-9);
        Oracle.Close(5.07, change.AsChange!.DegreesOfFreedom, 1e-10);
        Assert.Equal(MeanChange.Of([1, 2, 4, 5]).StandardDeviation, change.StandardDeviation);
    }

    [Fact]
    public void WithSharedError_OneAthlete_StillStatesNoError() => Assert.Null(MeanChange.Of([4]).WithSharedError(1).Mean.Interval);

    [Fact]
    public void Of_OneAthlete_StatesNoError()
    {
        var change = MeanChange.Of([4]);
        Assert.Null(change.Mean.Interval);
        Assert.Null(change.StandardDeviation);
        Assert.Equal("single value, no error known", change.Mean.Method);
    }
}
