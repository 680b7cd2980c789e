using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Catalogue;

public class BodyMetricsTests
{
    [Fact]
    public void BodyMass_WeighedThatDay_IsInKilograms()
    {
        var weighed = new BodyMeasure { AthleteId = "a1", Date = Days.Date, BodyMass = Mass.FromPounds(225) };
        Assert.Equal(102.058283, Assert.Single(BodyMetrics.BodyMass.FromTrials(Days.With(weighed))).Value, 1e-6); // 225 lb by the definition of the pound
    }

    [Fact]
    public void BodyMass_OnlyCarriedForward_IsNotAMeasurementOfTheDay()
        => Assert.Empty(BodyMetrics.BodyMass.FromTrials(Days.With()));
}
