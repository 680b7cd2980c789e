using Analytics.Metrics.ChangeOfDirection;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.ChangeOfDirection;

/// <summary>505 of 2.41 s left and 2.47 s right, 10 m in 1.80 s; deficit as in [nimphius2016], figures by 50-digit arithmetic.</summary>
public class DirectionDeficitTests
{
    private static readonly DirectionDeficit Known = DirectionDeficit.Of(TurnTest.FiveOhFive, S(2.41), S(2.47), S(1.80), S(0.03), S(0.02));

    [Fact]
    public void Deficit_of_each_side_and_of_both()
    {
        Assert.Equal(0.64, Known.Mean.Value, 1e-12);
        Assert.Equal(0.61, Known.Left.Value, 1e-12);
        Assert.Equal(0.67, Known.Right.Value, 1e-12);
        Assert.Equal(Math.Sqrt((0.0009 / 2) + 0.0004), Known.Mean.StandardError!.Value, 1e-12);
        Assert.Equal(Math.Sqrt(0.0009 + 0.0004), Known.Left.StandardError!.Value, 1e-12);
    }

    [Fact]
    public void Asymmetry_of_times_and_of_deficits()
    {
        Assert.Equal(2.489627, Known.TimeAsymmetry(AsymmetryDenominator.Faster).Percent, 5e-7);
        Assert.Equal(9.836066, Known.DeficitAsymmetry(AsymmetryDenominator.Faster).Percent, 5e-7);
        Assert.Equal(100 * 0.06 / 2.47, Known.TimeAsymmetry(AsymmetryDenominator.Slower).Percent, 1e-9);
        Assert.Equal(100 * 0.06 / 2.44, Known.TimeAsymmetry(AsymmetryDenominator.Mean).Percent, 1e-9);
    }

    [Fact]
    public void Sides_the_other_way_round_change_the_sign_only()
    {
        var other = DirectionDeficit.Of(TurnTest.FiveOhFive, S(2.47), S(2.41), S(1.80), S(0.03), S(0.02));
        Assert.Equal(-Known.DeficitAsymmetry(AsymmetryDenominator.Faster).Percent, other.DeficitAsymmetry(AsymmetryDenominator.Faster).Percent, 1e-12);
        Assert.Equal(Known.DeficitAsymmetry(AsymmetryDenominator.Faster).StandardErrorPercent!.Value, other.DeficitAsymmetry(AsymmetryDenominator.Faster).StandardErrorPercent!.Value, 1e-12);
    }

    // Both times and the sprint drawn with their errors, 200,000 times; the deficits share the sprint.
    [Theory]
    [InlineData(AsymmetryDenominator.Faster)]
    [InlineData(AsymmetryDenominator.Slower)]
    [InlineData(AsymmetryDenominator.Mean)]
    public void Errors_are_those_of_a_simulation(AsymmetryDenominator denominator)
    {
        var random = new Random(3);
        const int N = 200_000;
        var test = DirectionDeficit.Of(TurnTest.FiveOhFive, S(2.3), S(2.6), S(1.80), S(0.01), S(0.01));
        double times = 0, deficits = 0, timesSquared = 0, deficitsSquared = 0;
        for (var i = 0; i < N; i++)
        {
            double left = 2.3 + (0.01 * Normal(random)), right = 2.6 + (0.01 * Normal(random)), sprint = 1.8 + (0.01 * Normal(random));
            double t = Share(left, right), d = Share(left - sprint, right - sprint);
            (times, timesSquared, deficits, deficitsSquared) = (times + t, timesSquared + (t * t), deficits + d, deficitsSquared + (d * d));
        }
        Assert.Equal(1, test.TimeAsymmetry(denominator).StandardErrorPercent!.Value / Sd(times, timesSquared), 0.02);
        Assert.Equal(1, test.DeficitAsymmetry(denominator).StandardErrorPercent!.Value / Sd(deficits, deficitsSquared), 0.02);

        double Share(double left, double right) => 100 * (right - left) / denominator switch { AsymmetryDenominator.Faster => left, AsymmetryDenominator.Slower => right, _ => (left + right) / 2 };
        static double Sd(double sum, double squares) => Math.Sqrt((squares - (sum * sum / N)) / N);
    }

    [Fact]
    public void A_difference_within_the_error_is_said()
    {
        Assert.Contains("the sides may be alike", Known.TimeAsymmetry(AsymmetryDenominator.Faster).ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("may be alike", DirectionDeficit.Of(TurnTest.FiveOhFive, S(2.3), S(2.6), S(1.8), S(0.02), S(0.02)).TimeAsymmetry(AsymmetryDenominator.Faster).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_errors_none_is_shown()
    {
        var bare = DirectionDeficit.Of(TurnTest.ModifiedFiveOhFive, S(2.41), S(2.47), S(1.80));
        Assert.Null(bare.Mean.StandardError);
        Assert.Null(bare.DeficitAsymmetry(AsymmetryDenominator.Faster).Interval);
        Assert.Contains("no error known", bare.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 2.4, 1.8, "time turning left must be above 0 s")]
    [InlineData(2.4, 0, 1.8, "time turning right must be above 0 s")]
    [InlineData(2.4, 2.4, 0, "10 m sprint time must be above 0 s")]
    public void Times_of_0_are_refused(double left, double right, double sprint, string said)
        => Assert.Contains(said, Assert.Throws<ArgumentOutOfRangeException>(() => DirectionDeficit.Of(TurnTest.FiveOhFive, S(left), S(right), S(sprint))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_deficit_of_0_has_no_share()
        => Assert.Contains("deficit of the left must be above 0 s",
            Assert.Throws<ArgumentOutOfRangeException>(() => DirectionDeficit.Of(TurnTest.FiveOhFive, S(1.7), S(2.4), S(1.8)).DeficitAsymmetry(AsymmetryDenominator.Faster)).Message, StringComparison.Ordinal);

    [Fact]
    public void Mean_speed_of_the_pro_agility() => Assert.Equal(4.348074, ProAgility.MeanSpeed(S(4.206)).MetresPerSecond, 5e-7);

    private static Duration S(double seconds) => Duration.FromSeconds(seconds);

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
