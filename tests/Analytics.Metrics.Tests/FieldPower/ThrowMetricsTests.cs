using Analytics.Metrics.FieldPower;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.FieldPower;

public class ThrowMetricsTests
{
    [Fact]
    public void Throws_BallAndSide_AreSeries()
    {
        var day = Days.With(
            Days.Throw("rotational", 3, 11.2, Side.Left), Days.Throw("rotational", 3, 11.9, Side.Right),
            Days.Throw("rotational", 4.5359237, 9.1), Days.Throw("seated_chest", 3, 5));
        Assert.Equal(["3 kg, left", "3 kg, right", "4.54 kg"], ThrowMetrics.Rotational.FromTrials(day).Select(v => v.Series));
    }

    // Beckham and others 2019 print six trial means of 3.41 to 3.54 m with a 10 lb ball, seated.
    [Theory]
    [InlineData(3.41)]
    [InlineData(3.54)]
    public void SeatedChest_PrintedTrialMeans_ArePlausible(double metres)
    {
        var value = Assert.Single(ThrowMetrics.SeatedChest.FromTrials(Days.With(Days.Throw("seated_chest", 4.536, metres)))).Value;
        Assert.Equal(metres, value);
        Assert.InRange(value, ThrowMetrics.SeatedChest.PlausibleLow, ThrowMetrics.SeatedChest.PlausibleHigh);
    }

    [Fact]
    public void All_KindsOfThrow_AreKeptApart()
    {
        var day = Days.With([.. new[] { "overhead_back", "seated_chest", "standing_chest", "rotational", "unknown_throw" }.Select((t, i) => Days.Throw(t, 3, i + 5))]);
        Assert.Equal([5.0, 6, 7, 8], ThrowMetrics.All.Select(m => Assert.Single(m.FromTrials(day)).Value));
    }
}
