using System.Reflection;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Contact;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Contact;

/// <summary>Headings, equal momentum and cautions; figures from 50-digit arithmetic.</summary>
public class CollisionTests
{
    private static readonly Mass Light = Mass.FromPounds(190);
    private static readonly Mass Heavy = Mass.FromPounds(240);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(30, 3.500552254)]
    [InlineData(60, 6.557438524)]
    [InlineData(90, 9.219544457)]
    [InlineData(120, 11.26942767)]
    [InlineData(150, 12.55970278)]
    [InlineData(180, 13)]
    public void Closing_speed_by_heading(double degrees, double expected)
        => Assert.Equal(expected, ClosingSpeed.Of(Ms(7), Ms(6), Angle.FromDegrees(degrees)).MetresPerSecond, 5e-9);

    [Fact]
    public void Oblique_sticking_collision_agrees()
    {
        var c = Oblique(0, 120, new(0, 0, Duration.FromSeconds(0.1), Duration.FromSeconds(0.4)));
        Assert.Equal(1.41860465116, c.CommonForward.MetresPerSecond, 1e-9);
        Assert.Equal(2.90017809639, c.CommonLeft.MetresPerSecond, 1e-9);
        Assert.Equal(3.22854025019, c.CommonSpeed.MetresPerSecond, 1e-9);
        Assert.Equal(63.9347097611, c.CommonHeading!.Value.Degrees, 1e-9);
        Assert.Equal(3054.46992226, c.Impact.EnergyLost.High.Joules, 1e-7);
        Assert.Equal(c.CommonSpeed.MetresPerSecond, c.FirstAfter.Low.MetresPerSecond, 1e-12);
    }

    // Momentum and energy balance hold at full restitution whatever the heading.
    [Fact]
    public void Oblique_elastic_collision_keeps_energy()
    {
        var c = Oblique(10, 75, new(1, 1, Duration.FromSeconds(0.1), Duration.FromSeconds(0.4)));
        double before = (Light.Kilograms * 49) + (Heavy.Kilograms * 36);
        double after = (Light.Kilograms * Math.Pow(c.FirstAfter.Low.MetresPerSecond, 2)) + (Heavy.Kilograms * Math.Pow(c.SecondAfter.Low.MetresPerSecond, 2));
        Assert.Equal(before, after, 1e-8);
    }

    [Theory]
    [InlineData(20, 20)]
    [InlineData(20, 200)]
    public void Parallel_headings_are_refused(double one, double other)
        => Assert.Contains($"The headings {one}° and {other}° are parallel", Assert.Throws<ArgumentException>(() => Oblique(one, other, null)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(5, 544.310844, 6.315789474, 14.128019, 1360.77711, 1718.876349)]
    [InlineData(6, 653.1730128, 7.578947368, 16.953622, 1959.519038, 2475.181943)]
    [InlineData(7, 762.0351816, 8.842105263, 19.779226, 2667.123136, 3368.997645)]
    [InlineData(8, 870.8973504, 10.10526316, 22.60483, 3483.589402, 4400.323455)]
    public void Equal_momentum_of_190_lb_against_240_lb(double speed, double momentum, double needed, double mph, double energyHeavy, double energyLight)
    {
        var match = EqualMomentum.Of(Light, new(Heavy, Ms(speed)));
        Assert.Equal(momentum, match.Momentum.KilogramMetresPerSecond, 1e-7);
        Assert.Equal(needed, match.SpeedNeeded.MetresPerSecond, 5e-9);
        Assert.Equal(mph, match.SpeedNeeded.MilesPerHour, 5e-7);
        Assert.Equal(energyHeavy, match.OtherEnergy.Joules, 5e-7);
        Assert.Equal(energyLight, match.Energy.Joules, 5e-7);
    }

    [Fact]
    public void Every_figure_prints_its_cautions_as_text_and_in_a_notebook()
    {
        CautionedResult[] all =
        [
            LineCollision.Of(new(Light, Ms(7.5)), new(Heavy, Ms(-6))), Oblique(0, 120, null), EqualMomentum.Of(Light, new(Heavy, Ms(6))),
        ];
        Assert.All(all, r => Assert.All(r.Caution.Points, p => Assert.Contains(p, r.ToString(), StringComparison.Ordinal)));
        Assert.All(all, r => Assert.Contains("Suspected concussion: out at once and to medical staff", r.Sheet().ToHtml(), StringComparison.Ordinal));
        Assert.All(["head up", "shoulder", "head out of the line", "twice or half", "no measure of the risk of injury", "no licence to hit harder", "concussion", "Local rules"],
            words => Assert.Contains(words, CollisionCaution.Standard.ToString(), StringComparison.OrdinalIgnoreCase));
    }

    // A result with a force in it must be a cautioned one or live inside one, and nothing sorts by it.
    [Fact]
    public void No_figure_of_a_collision_can_be_made_without_caution_or_ranked()
    {
        var types = typeof(CautionedResult).Assembly.GetExportedTypes().Where(t => t.Namespace == "Analytics.Metrics.Contact").ToList();
        Assert.All(types.Where(t => t.Name.EndsWith("Collision", StringComparison.Ordinal)), t => Assert.True(t.IsSubclassOf(typeof(CautionedResult)), t.Name));
        Assert.All(types.Where(t => t.IsSubclassOf(typeof(CautionedResult)) || t == typeof(CollisionFigures)), t => Assert.Empty(t.GetConstructors(BindingFlags.Public | BindingFlags.Instance)));
        Assert.True(typeof(CollisionFigures).IsSubclassOf(typeof(CautionedResult)));
        Assert.Contains("Suspected concussion", LineCollision.Of(new(Light, Ms(7)), new(Heavy, Ms(-6))).Impact.ToString(), StringComparison.Ordinal);
        Assert.Empty(typeof(CollisionCaution).GetConstructors(BindingFlags.Public | BindingFlags.Instance));
        Assert.All(types.Where(t => t.IsSubclassOf(typeof(CautionedResult)) || t == typeof(CollisionFigures)), t => Assert.False(typeof(IComparable).IsAssignableFrom(t), t.Name));
        Assert.DoesNotContain(MetricCatalogue.All, m => m.Unit is "N" or "kN" or "N/kg");
    }

    private static ObliqueCollision Oblique(double first, double second, CollisionRanges? ranges)
        => ObliqueCollision.Of(new(Light, Ms(7)), Angle.FromDegrees(first), new(Heavy, Ms(6)), Angle.FromDegrees(second), ranges);

    private static Speed Ms(double metresPerSecond) => Speed.FromMetresPerSecond(metresPerSecond);
}
