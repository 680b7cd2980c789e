using Analytics.Quantities;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>
/// A collision of two headings. The push acts along the closing velocity, as for bodies that meet centre to centre and do not slide; a glancing contact gives less. With restitution 0 they go on together with
/// V = (m₁u₁ + m₂u₂)/(m₁ + m₂), as vectors.
/// </summary>
public sealed record ObliqueCollision : CautionedResult
{
    private readonly CollisionRanges ranges;

    private ObliqueCollision(CollisionBody first, Angle firstHeading, CollisionBody second, Angle secondHeading, CollisionRanges ranges) : base(CollisionCaution.Standard)
    {
        (First, FirstHeading, Second, SecondHeading, this.ranges) = (first, firstHeading, second, secondHeading, ranges);
        double m1 = first.Mass.Kilograms, m2 = second.Mass.Kilograms, total = m1 + m2;
        var (x1, y1) = Components(first.Speed, firstHeading);
        var (x2, y2) = Components(second.Speed, secondHeading);
        double x = ((m1 * x1) + (m2 * x2)) / total, y = ((m1 * y1) + (m2 * y2)) / total;
        CommonForward = Speed.FromMetresPerSecond(x);
        CommonLeft = Speed.FromMetresPerSecond(y);
        var closing = double.Hypot(x1 - x2, y1 - y2);
        Impact = new(m1, m2, closing, closing, ranges);
        double[] e = [ranges.RestitutionLow, ranges.RestitutionHigh];
        FirstAfter = QuantityRange<Speed>.Of(Range(-m2 / total));
        SecondAfter = QuantityRange<Speed>.Of(Range(m1 / total));

        // |V + k·e·w| has its least value inside the range where the foot of the perpendicular lies in it.
        IEnumerable<double> Range(double k)
        {
            double wx = k * (x1 - x2), wy = k * (y1 - y2);
            var foot = Math.Clamp(-((x * wx) + (y * wy)) / ((wx * wx) + (wy * wy)), e[0], e[1]);
            return new[] { e[0], e[1], foot }.Select(at => double.Hypot(x + (at * wx), y + (at * wy)));
        }
    }

    /// <summary>One body.</summary>
    public CollisionBody First { get; }

    /// <summary>Its heading, counter-clockwise from forward.</summary>
    public Angle FirstHeading { get; }

    /// <summary>The other body.</summary>
    public CollisionBody Second { get; }

    /// <summary>Its heading.</summary>
    public Angle SecondHeading { get; }

    /// <summary>Closing speed, impulse, energy lost, forces.</summary>
    public CollisionFigures Impact { get; }

    /// <summary>Forward velocity of both together (restitution 0), and of their centre of mass always.</summary>
    public Speed CommonForward { get; }

    /// <summary>The same to the left.</summary>
    public Speed CommonLeft { get; }

    /// <summary>Its size.</summary>
    public Speed CommonSpeed => Speed.FromMetresPerSecond(double.Hypot(CommonForward.MetresPerSecond, CommonLeft.MetresPerSecond));

    /// <summary>Its heading; null when both stand still afterwards.</summary>
    public Angle? CommonHeading => CommonSpeed > Speed.Zero ? Angle.FromRadians(Math.Atan2(CommonLeft.MetresPerSecond, CommonForward.MetresPerSecond)) : null;

    /// <summary>Speed of the first body afterwards.</summary>
    public QuantityRange<Speed> FirstAfter { get; }

    /// <summary>Speed of the second body afterwards.</summary>
    public QuantityRange<Speed> SecondAfter { get; }

    /// <summary>A collision of two headings.</summary>
    /// <param name="first">One body, speed above 0.</param>
    /// <param name="firstHeading">Its heading, counter-clockwise from forward.</param>
    /// <param name="second">The other body, speed above 0.</param>
    /// <param name="secondHeading">Its heading.</param>
    /// <param name="ranges">Restitution and time of contact; <see cref="CollisionRanges.Tackle"/> when left out.</param>
    /// <exception cref="ArgumentException">A speed of 0 or less, or parallel headings.</exception>
    public static ObliqueCollision Of(CollisionBody first, Angle firstHeading, CollisionBody second, Angle secondHeading, CollisionRanges? ranges = null)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        Require.Positive(first.Speed, "speed along a heading");
        Require.Positive(second.Speed, "speed along a heading");
        // Sine of the angle between them; rounding of degrees to radians leaves about 1e-16.
        if (Math.Abs(Math.Sin((secondHeading - firstHeading).Radians)) < 1e-9)
            throw new ArgumentException(FormattableString.Invariant($"The headings {firstHeading.Degrees}° and {secondHeading.Degrees}° are parallel: use {nameof(LineCollision)}, where it is known who is in front."), nameof(secondHeading));
        return new(first, firstHeading, second, secondHeading, ranges ?? CollisionRanges.Tackle);
    }

    private protected override ResultSheet Figures() => new("Collision of two headings", $"two rigid bodies, push along the closing velocity; {ranges}",
    [
        .. Impact.Lines(),
        new("speed together", CommonSpeed.MetresPerSecond, "m/s"),
        new("heading together", CommonHeading?.Degrees, "°"),
        .. FirstAfter.Lines("speed of the first afterwards"), .. SecondAfter.Lines("speed of the second afterwards"),
    ]) { Basis = FormattableString.Invariant($"{First.Mass} at {First.Speed} heading {FirstHeading.Degrees:0.#}° and {Second.Mass} at {Second.Speed} heading {SecondHeading.Degrees:0.#}°") };

    private static (double X, double Y) Components(Speed speed, Angle heading)
        => (speed.MetresPerSecond * Math.Cos(heading.Radians), speed.MetresPerSecond * Math.Sin(heading.Radians));
}
