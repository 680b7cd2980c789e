namespace Analytics.Quantities.Tests;

/// <summary>Operators between quantities: worked physical identities, and a dimension check of every operator there is.</summary>
public class CrossOperatorTests
{
    private static readonly Mass EightyKilograms = Mass.FromKilograms(80);
    private static readonly Speed TwoAndAHalf = Speed.FromMetresPerSecond(2.5);

    /// <summary>Every operator of a quantity with another kind, as text that names the test.</summary>
    public static TheoryData<string> Operators => new(CrossOperator.All.Select(o => o.ToString()));

    [Theory, MemberData(nameof(Operators))]
    public void Operator_DimensionsAndNumbers_Agree(string name)
    {
        var op = CrossOperator.All.Single(o => o.ToString() == name);

        Assert.Equal(op.ExpectedDimension(), Dimension.Of(op.Result));
        Assert.Equal(op.IsProduct ? 15 : 2.4, op.Apply(6, 2.5));
    }

    [Fact]
    public void Product_EveryOne_WorksBothWaysRound()
        => Assert.All(CrossOperator.All.Where(o => o.IsProduct), o
            => Assert.Contains(CrossOperator.All, t => t.IsProduct && t.Left == o.Right && t.Right == o.Left && t.Result == o.Result));

    // F = m a: 80 kg under 9.81 m/s² weigh 784.8 N.
    [Fact]
    public void Force_IsMassTimesAcceleration()
    {
        var weight = EightyKilograms * Acceleration.FromMetresPerSecondSquared(9.81);

        Assert.Equal(784.8, weight.Newtons, 1e-10);
        Assert.Equal(9.81, (weight / EightyKilograms).MetresPerSecondSquared, 1e-14);
        Assert.Equal(9.81, weight.Per(EightyKilograms).NewtonsPerKilogram, 1e-14);
    }

    // P = F v: 1584.8 N at 2.5 m/s is 3962 W, 49.525 W/kg for 80 kg.
    [Fact]
    public void Power_IsForceTimesSpeed()
    {
        var power = Force.FromNewtons(1584.8) * TwoAndAHalf;

        Assert.Equal(3962, power.Watts, 1e-10);
        Assert.Equal(49.525, (power / EightyKilograms).WattsPerKilogram, 1e-12);
        Assert.Equal(3962, (EightyKilograms * PowerPerMass.FromWattsPerKilogram(49.525)).Watts, 1e-10);
    }

    // p = m v, and the impulse 800 N over 0.25 s = 200 N·s gives 80 kg the same 2.5 m/s.
    [Fact]
    public void Momentum_IsMassTimesSpeedAndImpulseChangesIt()
    {
        var momentum = EightyKilograms * TwoAndAHalf;
        var impulse = Force.FromNewtons(800) * Duration.FromSeconds(0.25);

        Assert.Equal(200, momentum.KilogramMetresPerSecond, 1e-12);
        Assert.Equal(200, impulse.NewtonSeconds, 1e-12);
        Assert.Equal(TwoAndAHalf, impulse / EightyKilograms);
        Assert.Equal(TwoAndAHalf, momentum / EightyKilograms);
        Assert.Equal(800, (momentum / Duration.FromSeconds(0.25)).Newtons, 1e-12);
    }

    // W = F s = P t: 784.8 N up 1.05 m is 824.04 J; in 0.52 s that is 1584.692... W (824.04 / 0.52, by hand).
    [Fact]
    public void Energy_IsForceTimesLengthAndPowerTimesTime()
    {
        var work = Force.FromNewtons(784.8) * Length.FromMetres(1.05);
        var power = work / Duration.FromSeconds(0.52);

        Assert.Equal(824.04, work.Joules, 1e-10);
        Assert.Equal(1584.6923076923, power.Watts, 1e-9);
        Assert.Equal(824.04, (power * Duration.FromSeconds(0.52)).Joules, 1e-10);
        Assert.Equal(784.8, (work / Length.FromMetres(1.05)).Newtons, 1e-10);
    }

    // v = s / t, a = v / t: 10 yd in 1.6 s is 5.715 m/s.
    [Fact]
    public void Speed_IsLengthOverDuration()
    {
        var speed = Length.FromYards(10) / Duration.FromSeconds(1.6);

        Assert.Equal(5.715, speed.MetresPerSecond, 1e-14);
        Assert.Equal(9.144, (speed * Duration.FromSeconds(1.6)).Metres, 1e-14);
        Assert.Equal(1.6, (Length.FromYards(10) / speed).Seconds, 1e-14);
        Assert.Equal(5.715, (speed / Duration.FromSeconds(1)).MetresPerSecondSquared, 1e-14);
    }

    [Fact]
    public void Per_BodyMassOfZero_IsRefusedByName()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Force.FromNewtons(800).Per(Mass.Zero));

        Assert.Equal("bodyMass", error.ParamName);
        Assert.Contains("above 0 kg; got 0", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Quotient_ByZero_IsRefused()
        => Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromMetres(10) / Duration.Zero);
}
