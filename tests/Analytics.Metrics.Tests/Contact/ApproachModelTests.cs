using Analytics.Metrics.Contact;
using Analytics.Metrics.Sprinting.Curve;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics;
using static Analytics.Metrics.Tests.Contact.Seen;

namespace Analytics.Metrics.Tests.Contact;

public class ApproachModelTests
{
    // Splits of a made-up run in the trade's usual five gates, to 0.01 s.
    private static readonly Split[] Gates =
        [.. new[] { (5, 1.37), (10, 2.12), (20, 3.40), (30, 4.61), (40, 5.80) }.Select(g => new Split(Length.FromMetres(g.Item1), S(g.Item2)))];

    // 50-digit arithmetic of the mono-exponential sprint (keller1973): 190 lb with V 8.8 m/s, T 0.77 s and 240 lb with V 8.2 m/s.
    [Theory]
    [InlineData(190, 8.8, 3, 509.6481701)]
    [InlineData(190, 8.8, 5, 592.3611287)]
    [InlineData(190, 8.8, 9.144, 677.9391122)]
    [InlineData(190, 8.8, 18.288, 739.1534179)]
    [InlineData(240, 8.2, 3, 613.5009141)]
    [InlineData(240, 8.2, 5, 710.1655582)]
    [InlineData(240, 8.2, 9.144, 807.803528)]
    [InlineData(240, 8.2, 18.288, 874.1556158)]
    public void Momentum_over_a_gap(double pounds, double topSpeed, double metres, double momentum)
        => Assert.Equal(momentum, Exact(pounds, topSpeed).MomentumAfter(Length.FromMetres(metres)).Value, 1e-6);

    [Fact]
    public void A_curve_taken_as_exact_has_no_error()
    {
        var speed = Exact(190, 8.8).SpeedAfter(Length.FromMetres(5));
        Assert.Null(speed.StandardError);
        Assert.Contains("taken as exact", speed.Method, StringComparison.Ordinal);
    }

    public static TheoryData<string> Figures => ["time over 1 m", "time over 5 m", "speed after 1 m", "speed after 5 m", "momentum after 5 m", "distance after 0.5 s", "speed after 0.5 s", "momentum after 0.5 s"];

    // Parameters and mass drawn from the fit's own normal law, 400,000 times: the delta method must give their SD to 2 %.
    [Theory]
    [MemberData(nameof(Figures))]
    public void Errors_by_derivatives_are_those_of_a_simulation(string figure)
    {
        var fit = SplitFitter.Fit(Gates).Curve!;
        var mass = Mass.FromKilograms(95);
        var c = fit.Covariance!;
        double v = fit.FromRest.TopSpeed.MetresPerSecond, tau = fit.FromRest.TimeConstant.Seconds;
        double a = Math.Sqrt(c[0, 0]), b = c[1, 0] / a, d = Math.Sqrt(c[1, 1] - (b * b));
        var random = new Random(11);
        var (n, sum, squares) = (400_000, 0.0, 0.0);
        var stated = Value(ApproachModel.Of(fit, StartType.FirstMovement, mass), figure);
        for (var i = 0; i < n; i++)
        {
            double z1 = Normal(random), z2 = Normal(random), kilograms = 95 + (0.5 * Normal(random));
            var x = Direct(new(Speed.FromMetresPerSecond(v + (a * z1)), S(tau + (b * z1) + (d * z2))), kilograms, figure) - stated.Value;
            (sum, squares) = (sum + x, squares + (x * x));
        }
        var sd = Math.Sqrt((squares - (sum * sum / n)) / n);
        Assert.Equal(1, stated.StandardError!.Value / sd, 0.02);
    }

    [Fact]
    public void What_would_change_it()
    {
        var over = Exact(200, 8.8).Over(Length.FromMetres(5));
        var kilogram = over.Sensitivities.Single(s => s.Change == "1 kg more");
        Assert.Equal(over.Speed.Value, kilogram.Momentum.KilogramMetresPerSecond, 1e-9);
        Assert.Equal(0, kilogram.Time.Seconds, 1e-12);
        // V 8.9 in place of 8.8 m/s at 5 m, from the same arithmetic as a run of its own.
        var faster = over.Sensitivities.Single(s => s.Change == "0.1 m/s more top speed");
        Assert.Equal(Exact(200, 8.9).SpeedAfter(Length.FromMetres(5)).Value - over.Speed.Value, faster.Speed.MetresPerSecond, 1e-12);
        Assert.True(over.Sensitivities.Single(s => s.Change == "0.1 s shorter time constant").Time < Duration.Zero);
        Assert.Contains("1 kg more", over.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(StartType.StandingBeam, StartModel.Still, StartCaveatKind.FlyingStart)]
    [InlineData(StartType.ThreePointHand, StartModel.Still, StartCaveatKind.HandLift)]
    [InlineData(StartType.Signal, StartModel.Still, StartCaveatKind.ReactionInside)]
    [InlineData(StartType.StandingBeam, StartModel.RunIn, null)]
    public void The_start_is_named_where_it_bends_the_time_constant(StartType start, StartModel model, StartCaveatKind? kind)
        => Assert.Equal(kind, StartCaveat.For(start, model)?.Kind);

    [Fact]
    public void A_mass_or_gap_of_0_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ApproachModel.Of(new MonoExponential(Speed.FromMetresPerSecond(8), S(1)), Mass.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Exact(200, 8).SpeedAfter(Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => Exact(200, 8).SpeedAfter(Duration.Zero));
    }

    private static ApproachModel Exact(double pounds, double topSpeed) => ApproachModel.Of(new(Speed.FromMetresPerSecond(topSpeed), S(0.77)), Mass.FromPounds(pounds));

    private static Estimate Value(ApproachModel m, string figure) => figure switch
    {
        "time over 1 m" => m.TimeToCover(Length.FromMetres(1)),
        "time over 5 m" => m.TimeToCover(Length.FromMetres(5)),
        "speed after 1 m" => m.SpeedAfter(Length.FromMetres(1)),
        "speed after 5 m" => m.SpeedAfter(Length.FromMetres(5)),
        "momentum after 5 m" => m.MomentumAfter(Length.FromMetres(5)),
        "distance after 0.5 s" => m.DistanceAfter(S(0.5)),
        "speed after 0.5 s" => m.SpeedAfter(S(0.5)),
        _ => m.MomentumAfter(S(0.5)),
    };

    private static double Direct(MonoExponential curve, double kilograms, string figure) => figure switch
    {
        "time over 1 m" => curve.TimeTo(Length.FromMetres(1)).Seconds,
        "time over 5 m" => curve.TimeTo(Length.FromMetres(5)).Seconds,
        "speed after 1 m" => curve.SpeedAt(Length.FromMetres(1)).MetresPerSecond,
        "speed after 5 m" => curve.SpeedAt(Length.FromMetres(5)).MetresPerSecond,
        "momentum after 5 m" => kilograms * curve.SpeedAt(Length.FromMetres(5)).MetresPerSecond,
        "distance after 0.5 s" => curve.DistanceAt(S(0.5)).Metres,
        "speed after 0.5 s" => curve.SpeedAt(S(0.5)).MetresPerSecond,
        _ => kilograms * curve.SpeedAt(S(0.5)).MetresPerSecond,
    };

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
