using Analytics.Metrics.Contact;
using Analytics.Quantities;
using static Analytics.Metrics.Tests.Contact.Seen;

namespace Analytics.Metrics.Tests.Contact;

/// <summary>Against tests/oracles/contact/collisions.csv (50-digit arithmetic); a range of one value gives the single case.</summary>
public class LineCollisionTests
{
    public static TheoryData<string> Cases => [.. OracleTable.Read("contact/collisions.csv").Select(r => r.Text("case"))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_case_of_the_table_agrees(string name)
    {
        var row = OracleTable.Read("contact/collisions.csv").Single(r => r.Text("case") == name);
        var c = LineCollision.Of(Body(row["m1_kg"], row["u1_mps"]), Body(row["m2_kg"], row["u2_mps"]), new(row["e"], row["e"], S(row["contact_s"]), S(row["contact_s"])));
        Same(row["v1_mps"], c.FirstAfter.Low.Si, c.FirstAfter.High.Si);
        Same(row["v2_mps"], c.SecondAfter.Low.Si, c.SecondAfter.High.Si);
        Same(row["v_cm_mps"], c.CommonSpeed.Low.Si, c.CommonSpeed.High.Si);
        Same(row["reduced_mass_kg"], c.Impact.ReducedMass.Si);
        Same(row["closing_speed_mps"], c.Impact.ClosingSpeed.Low.Si, c.Impact.ClosingSpeed.High.Si);
        Same(row["impulse_Ns"], c.Impact.Impulse.Low.Si, c.Impact.Impulse.High.Si);
        Same(row["energy_lost_J"], c.Impact.EnergyLost.Low.Si, c.Impact.EnergyLost.High.Si);
        Same(row["dv1_mps"], c.FirstAfter.Low.Si - row["u1_mps"]);
        Same(row["dv2_mps"], c.SecondAfter.Low.Si - row["u2_mps"]);
        Same(row["mean_force_N"], c.Impact.MeanForce.Low.Si, c.Impact.MeanForce.High.Si);
        Same(row["mean_a1_mps2"], c.Impact.FirstAcceleration.Low.Si, c.Impact.FirstAcceleration.High.Si);
        Same(row["mean_a2_mps2"], c.Impact.SecondAcceleration.Low.Si, c.Impact.SecondAcceleration.High.Si);
        Same(row["KE_before_J"], c.EnergyBefore.Low.Si, c.EnergyBefore.High.Si);
        Same(row["mean_force_N"] * 1.57079632679, c.Impact.PeakForceHalfSine.Low.Si);
        Same(row["mean_force_N"] * 2, c.Impact.PeakForceTriangular.High.Si);
    }

    // 190 lb at 7.5 m/s against 240 lb at 6 m/s, restitution 0 to 0.3, contact 0.1 to 0.4 s: impulse 649.375495284 to 844.188143869 N·s (table), over 0.4 and 0.1 s.
    [Fact]
    public void The_usual_ranges_give_the_ends()
    {
        var c = LineCollision.Of(Body(86.1825503, 7.5), Body(108.8621688, -6));
        Same(649.375495284 / 0.4, c.Impact.MeanForce.Low.Newtons);
        Same(8441.88143869, c.Impact.MeanForce.High.Newtons);
        Same(649.375495284 / 0.4 * 1.57079632679, c.Impact.PeakForce.Low.Newtons);
        Same(2 * 8441.88143869, c.Impact.PeakForce.High.Newtons);
        Same(3988.78897978, c.Impact.EnergyLost.Low.Joules);
        Same(4383.28459317, c.Impact.EnergyLost.High.Joules);
        Same(-2.29534883721, c.FirstAfter.Low.Si);
        Same(1.75465116279, c.SecondAfter.High.Si);
    }

    [Fact]
    public void Doubt_of_speeds_widens_every_range()
    {
        var c = LineCollision.Of(Body(86.1825503, 7.5), Body(108.8621688, -6), CollisionRanges.Tackle, Speed.FromMetresPerSecond(0.3), Speed.FromMetresPerSecond(0.2));
        Same(48.1018885395 * 13, c.Impact.Impulse.Low.Si);
        Same(48.1018885395 * 1.3 * 14, c.Impact.Impulse.High.Si);
        Same(((86.1825503 * 7.2) - (108.8621688 * 6.2) - (108.8621688 * 0.3 * 13.4)) / 195.0447191, c.FirstAfter.Low.Si);
    }

    [Theory]
    [InlineData(0, "mass of a body must be above 0 kg")]
    [InlineData(-80, "0 or more")]
    public void A_mass_of_0_or_less_is_refused(double kilograms, string said)
        => Assert.Contains(said, Assert.Throws<ArgumentOutOfRangeException>(() => Body(kilograms, 5)).Message, StringComparison.Ordinal);

    [Fact]
    public void Bodies_that_do_not_close_are_refused()
        => Assert.Contains("The bodies do not meet for certain: the first runs at 6 m/s, the second at 8 m/s",
            Assert.Throws<ArgumentException>(() => LineCollision.Of(Body(90, 6), Body(100, 8))).Message, StringComparison.Ordinal);

    [Fact]
    public void Ranges_out_of_order_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new CollisionRanges(0.3, 0.1, S(0.1), S(0.2)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CollisionRanges(0, 1.1, S(0.1), S(0.2)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CollisionRanges(0, 0.3, S(0), S(0.2)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CollisionRanges(0, 0.3, S(0.3), S(0.2)));
    }

    private static CollisionBody Body(double kilograms, double metresPerSecond) => new(Mass.FromKilograms(kilograms), Speed.FromMetresPerSecond(metresPerSecond));

    private static void Same(double expected, params double[] actual)
        => Assert.All(actual, a => Assert.True(Math.Abs(a - expected) <= 1e-9 * Math.Max(1, Math.Abs(expected)), $"expected {expected:R}, got {a:R}"));
}
