using UN = UnitsNet;

namespace Analytics.Quantities.Tests;

/// <summary>
/// Every conversion factor against UnitsNet, an independent general-purpose unit package, and where that package has no such
/// unit against the definition of the unit. Tolerance: that package rounds some factors to about 13 digits, hence 1e-11.
/// </summary>
public class ConversionTests
{
    private const double Tolerance = 1e-11;

    private static readonly Dictionary<(string Quantity, string Unit), double> Expected = new()
    {
        [("Mass", "kg")] = 1,
        [("Mass", "g")] = UN.Mass.FromGrams(1).Kilograms,
        [("Mass", "lb")] = UN.Mass.FromPounds(1).Kilograms,
        [("Length", "m")] = 1,
        [("Length", "cm")] = UN.Length.FromCentimeters(1).Meters,
        [("Length", "mm")] = UN.Length.FromMillimeters(1).Meters,
        [("Length", "km")] = UN.Length.FromKilometers(1).Meters,
        [("Length", "in")] = UN.Length.FromInches(1).Meters,
        [("Length", "ft")] = UN.Length.FromFeet(1).Meters,
        [("Length", "yd")] = UN.Length.FromYards(1).Meters,
        [("Length", "mi")] = UN.Length.FromMiles(1).Meters,
        [("Duration", "s")] = 1,
        [("Duration", "ms")] = UN.Duration.FromMilliseconds(1).Seconds,
        [("Duration", "min")] = UN.Duration.FromMinutes(1).Seconds,
        [("Duration", "h")] = UN.Duration.FromHours(1).Seconds,
        [("Speed", "m/s")] = 1,
        [("Speed", "km/h")] = UN.Speed.FromKilometersPerHour(1).MetersPerSecond,
        [("Speed", "mph")] = UN.Speed.FromMilesPerHour(1).MetersPerSecond,
        [("Speed", "yd/s")] = UN.Speed.FromYardsPerSecond(1).MetersPerSecond,
        [("Speed", "ft/s")] = UN.Speed.FromFeetPerSecond(1).MetersPerSecond,
        [("Acceleration", "m/s²")] = 1,
        [("Acceleration", "g₀")] = UN.Acceleration.FromStandardGravity(1).MetersPerSecondSquared,
        [("Force", "N")] = 1,
        [("Force", "kN")] = UN.Force.FromKilonewtons(1).Newtons,
        [("Force", "lbf")] = UN.Force.FromPoundsForce(1).Newtons,
        [("Force", "kgf")] = UN.Force.FromKilogramsForce(1).Newtons,
        [("Power", "W")] = 1,
        [("Power", "kW")] = (double)UN.Power.FromKilowatts(1).Watts,
        // Mechanical horsepower is 550 ft·lbf/s; that package rounds it to 745.69 W, so the definition is worked by hand (745.699 871 582 270 22 W).
        [("Power", "hp")] = 745.69987158227022,
        [("Energy", "J")] = 1,
        [("Energy", "kJ")] = UN.Energy.FromKilojoules(1).Joules,
        // 0.3048 m × 0.45359237 kg × 9.80665 m/s², worked by hand; that package rounds to 1.355817948.
        [("Energy", "ft·lbf")] = 1.3558179483314004,
        [("Momentum", "kg·m/s")] = 1,
        // 0.45359237 kg × 0.3048 m/s, worked by hand.
        [("Momentum", "lb·ft/s")] = 0.138254954376,
        [("Impulse", "N·s")] = 1,
        [("Impulse", "lbf·s")] = UN.Impulse.FromPoundForceSeconds(1).NewtonSeconds,
        [("Angle", "rad")] = 1,
        [("Angle", "°")] = UN.Angle.FromDegrees(1).Radians,
        [("Frequency", "Hz")] = 1,
        [("Frequency", "1/min")] = UN.Frequency.FromCyclesPerMinute(1).Hertz,
        [("ForcePerMass", "N/kg")] = 1,
        [("PowerPerMass", "W/kg")] = 1,
    };

    public static TheoryData<string> Quantities => QuantityTypes.Names;

    [Theory, MemberData(nameof(Quantities))]
    public void Units_EveryFactor_AgreesWithAnIndependentSource(string quantity)
        => Assert.All(UnitsOf(quantity), unit =>
        {
            Assert.True(Expected.TryGetValue((quantity, unit.Symbol), out var factor), $"Add {quantity} in {unit.Symbol} to this table, from an independent source.");
            Assert.Equal(1, unit.ToSi / factor, Tolerance);
        });

    // Decimal arithmetic by hand: 225 lb = 102.05828325 kg; 40 yd = 36.576 m; 6 ft 2 in = 1.8796 m; 20 mph = 8.9408 m/s.
    [Fact]
    public void From_CoachesUnits_GiveExactSi()
    {
        Assert.Equal(102.05828325, Mass.FromPounds(225).Kilograms, 1e-13);
        Assert.Equal(36.576, Length.FromYards(40).Metres, 1e-14);
        Assert.Equal(1.8796, Length.FromInches(74).Metres, 1e-15);
        Assert.Equal(8.9408, Speed.FromMilesPerHour(20).MetresPerSecond, 1e-14);
        Assert.Equal(9.144, Length.FromYards(10).Metres, 1e-14);
    }

    // A decimal part of a unit is the double nearest to the decimal number: no 0.5700000000000001.
    [Fact]
    public void From_DecimalParts_GiveTheNearestDouble()
    {
        Assert.Equal(0.57, Length.FromCentimetres(57).Metres);
        Assert.Equal(1.623, Duration.FromMilliseconds(1623).Seconds);
        Assert.Equal(0.035, Mass.FromGrams(35).Kilograms);
        Assert.Equal(3, Frequency.FromPerMinute(180).Hertz);
    }

    private static IReadOnlyList<Unit> UnitsOf(string quantity)
        => (IReadOnlyList<Unit>)QuantityTypes.All.Single(t => t.Name == quantity).GetProperty("Units")!.GetValue(null)!;
}
