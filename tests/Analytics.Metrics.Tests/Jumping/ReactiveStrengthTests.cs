using Analytics.Metrics.Jumping;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Jumping;

public class ReactiveStrengthTests
{
    // Definitions of Flanagan, Ebben and Jensen 2008 and Ebben and Petushek 2010, rows in tests/oracles/jumping.
    [Fact]
    public void Indices_OracleRows_Agree()
    {
        foreach (var row in OracleTable.Read("jumping/reactive.csv"))
        {
            var (jump, time) = (row["jump"], Duration.FromSeconds(row["time_s"]));
            var kind = row.Text("index");
            var value = kind switch
            {
                "height to contact" => ReactiveStrength.Index(Length.FromMetres(jump), time).MetresPerSecond,
                "flight to height to contact" => ReactiveStrength.Index(JumpHeight.FromFlightTime(Duration.FromSeconds(jump)), time).MetresPerSecond,
                "flight to contact" => ReactiveStrength.FlightContactRatio(Duration.FromSeconds(jump), time),
                "height to take-off" => ReactiveStrength.Modified(Length.FromMetres(jump), time).MetresPerSecond,
                _ => throw new InvalidDataException(kind),
            };
            Close.ToSixDigits(row["value"], value, kind);
        }
    }

    // Sole, Suchomel and Stone 2018 print 0.208 to 0.704 for 76 college men; a 38 cm jump in 0.75 s is an ordinary one.
    [Fact]
    public void Modified_OrdinaryJump_LiesInThePrintedRange()
        => Assert.InRange(ReactiveStrength.Modified(Length.FromCentimetres(38), Duration.FromSeconds(0.75)).MetresPerSecond, 0.208, 0.704);

    [Fact]
    public void IndexAndRatio_SameJump_AreDifferentNumbers()
    {
        var (flight, contact) = (Duration.FromSeconds(0.5), Duration.FromSeconds(0.2));
        Assert.Equal(2.5, ReactiveStrength.FlightContactRatio(flight, contact), 1e-12);
        Assert.Equal(1.53281, ReactiveStrength.Index(JumpHeight.FromFlightTime(flight), contact).MetresPerSecond, 1e-5);
    }

    // Analytic jump: 80 kg, net −400 N for 0.20 s, +800 N for 0.35 s; take-off 2.5 m/s after 0.55 s (worked by hand from Newton's second law).
    [Fact]
    public void ContractionIndices_AnalyticJump_Agree()
    {
        var takeOff = Duration.FromSeconds(0.55);
        var height = JumpHeight.FromTakeOffSpeed(Speed.FromMetresPerSecond(2.5));
        Close.ToSixDigits(0.579186, ReactiveStrength.Modified(height, takeOff).MetresPerSecond);
        Close.ToSixDigits(0.926698, ReactiveStrength.FlightContractionRatio(JumpHeight.ToFlightTime(height), takeOff));
    }

    [Fact]
    public void Index_NoContactTime_SaysSo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => ReactiveStrength.Index(Length.FromMetres(0.3), Duration.Zero));
        Assert.Equal("contact", error.ParamName);
        Assert.Contains("Contact time must be above 0 s; got 0 s", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Modified_NegativeHeight_SaysSo()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => ReactiveStrength.Modified(Length.FromMetres(-0.3), Duration.FromSeconds(0.7)));
        Assert.Equal("height", error.ParamName);
        Assert.Contains("Jump height must be 0 m or more; got -0.3 m", error.Message, StringComparison.Ordinal);
    }
}
