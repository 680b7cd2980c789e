using Analytics.Metrics.Bench;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Bench;

public class MassDependenceTests
{
    private static readonly double[] s_mass = [78, 82, 85, 88, 92, 95, 99, 104, 108, 113, 121, 130];
    private static readonly double[] s_values = [4.1, 3.9, 4.4, 4.3, 4.2, 4.9, 4.6, 4.5, 5.1, 4.8, 5.3, 5.0];

    // R 4.2.2, to twelve digits: coef(lm(log(y) ~ log(m)))[2], the same with each row left out, cor(m, y, method = "spearman").
    [Fact]
    public void Of_TwelveAthletes_AgreesWithLinesOfR()
    {
        var mass = Of(s_mass, s_values)!;

        Assert.Equal(0.509071794427, mass.Exponent!.Value, 1e-11);
        Assert.Equal(0.454513439326, mass.LeastWithoutOne!.Value, 1e-11);
        Assert.Equal(0.591130656508, mass.MostWithoutOne!.Value, 1e-11);
        Assert.Equal(0.874125874126, mass.Rank.Value, 1e-11);
        Assert.Equal(12, mass.N);
        Assert.True(mass.Exponent.Interval!.Value.Contains(0.509));
        // The line's own interval is 0.2905 to 0.7276 (R, confint), 0.437 wide; percentiles of twelve are as wide to a fourth or so.
        Assert.InRange(mass.Exponent.Interval.Value.High - mass.Exponent.Interval.Value.Low, 0.33, 0.55);
    }

    // A value in proportion to a power of mass grows with that power.
    [Theory]
    [InlineData(1)]
    [InlineData(0.67)]
    [InlineData(-0.5)]
    public void Of_PowersOfMass_GivesThePower(double power)
    {
        var mass = Of(s_mass, [.. s_mass.Select(m => 3 * Math.Pow(m, power))])!;

        Assert.Equal(power, mass.Exponent!.Value, 1e-12);
        Assert.Equal(power, mass.LeastWithoutOne!.Value, 1e-12);
        Assert.Equal(Math.Sign(power), mass.Rank.Value, 1e-12);
    }

    [Fact]
    public void Of_ValueThatIsZero_HasARankButNoPower()
    {
        var mass = Of(s_mass, [0, .. s_values.Skip(1)])!;

        Assert.Equal((null, null, null), (mass.Exponent, mass.LeastWithoutOne, mass.MostWithoutOne));
        Assert.True(mass.Rank.Value > 0.8);
    }

    // Those without a mass take no part; fewer than eight, or fewer than three different values, say nothing.
    [Fact]
    public void Of_TooLittle_IsNothing()
    {
        Assert.Equal(8, Of([.. s_mass.Take(8), .. Enumerable.Repeat(double.NaN, 4)], s_values)!.N);
        Assert.Null(Of([.. s_mass.Take(7), .. Enumerable.Repeat(double.NaN, 5)], s_values));
        Assert.Null(Of([.. s_mass.Select((_, i) => i < 6 ? 80.0 : 90)], s_values));
        Assert.Null(Of(s_mass, [.. s_values.Select(_ => 4.0)]));
    }

    private static MassDependence? Of(double[] mass, double[] values)
    {
        var (own, occasion, _) = Benches.One([.. values.Select(v => ("Line", v))]);
        var days = mass.Select((m, i) => new AthleteDay { AthleteId = $"a{i + 1}", Date = occasion.From, Trials = [], BodyMass = double.IsNaN(m) ? null : Mass.FromKilograms(m) });
        return MassDependence.Of(own, occasion, days, BenchRule.Standard);
    }
}
