using Analytics.Quantities;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>
/// What the closing speed w and the masses alone fix. Reduced mass μ = m₁m₂/(m₁ + m₂), impulse J = μ(1 + e)w, energy lost μ(1 − e²)w²/2, mean force J/Δt. Every one of them rises or falls steadily
/// with e, Δt and w, so the ends of the ranges give its ends. Mechanics of two rigid bodies, any textbook.
/// </summary>
public sealed record CollisionFigures : CautionedResult
{
    /// <summary>Peak over mean of a half-sine pulse.</summary>
    public const double HalfSinePeak = Math.PI / 2;

    /// <summary>Peak over mean of a triangular pulse.</summary>
    public const double TriangularPeak = 2;

    private readonly CollisionRanges ranges;

    internal CollisionFigures(double m1, double m2, double closingLow, double closingHigh, CollisionRanges ranges) : base(CollisionCaution.Standard)
    {
        this.ranges = ranges;
        var mu = m1 * m2 / (m1 + m2);
        ReducedMass = Mass.FromKilograms(mu);
        ClosingSpeed = new(Speed.FromMetresPerSecond(closingLow), Speed.FromMetresPerSecond(closingHigh));
        double low = mu * (1 + ranges.RestitutionLow) * closingLow, high = mu * (1 + ranges.RestitutionHigh) * closingHigh;
        Impulse = new(Quantities.Impulse.FromSi(low), Quantities.Impulse.FromSi(high));
        EnergyLost = new(Energy.FromJoules(Lost(ranges.RestitutionHigh, closingLow)), Energy.FromJoules(Lost(ranges.RestitutionLow, closingHigh)));
        double slow = low / ranges.ContactLong.Seconds, fast = high / ranges.ContactShort.Seconds;
        MeanForce = Newtons(slow, fast);
        PeakForce = Newtons(HalfSinePeak * slow, TriangularPeak * fast);
        PeakForceHalfSine = Newtons(HalfSinePeak * slow, HalfSinePeak * fast);
        PeakForceTriangular = Newtons(TriangularPeak * slow, TriangularPeak * fast);
        (FirstAcceleration, SecondAcceleration) = (Mean(m1), Mean(m2));

        double Lost(double e, double w) => mu * (1 - (e * e)) * w * w / 2;
        QuantityRange<Acceleration> Mean(double m) => new(Acceleration.FromMetresPerSecondSquared(slow / m), Acceleration.FromMetresPerSecondSquared(fast / m));
    }

    /// <summary>μ.</summary>
    public Mass ReducedMass { get; }

    /// <summary>w, speed at which the bodies approach each other.</summary>
    public QuantityRange<Speed> ClosingSpeed { get; }

    /// <summary>J, on each body.</summary>
    public QuantityRange<Impulse> Impulse { get; }

    /// <summary>Energy of motion turned into other forms.</summary>
    public QuantityRange<Energy> EnergyLost { get; }

    /// <summary>Mean force over the contact.</summary>
    public QuantityRange<Force> MeanForce { get; }

    /// <summary>Peak force from a half-sine to a triangular pulse.</summary>
    public QuantityRange<Force> PeakForce { get; }

    /// <summary>Peak force of a half-sine pulse: π/2 times the mean.</summary>
    public QuantityRange<Force> PeakForceHalfSine { get; }

    /// <summary>Peak force of a triangular pulse: twice the mean.</summary>
    public QuantityRange<Force> PeakForceTriangular { get; }

    /// <summary>Mean acceleration of the first body over the contact, without sign.</summary>
    public QuantityRange<Acceleration> FirstAcceleration { get; }

    /// <summary>Mean acceleration of the second body, without sign.</summary>
    public QuantityRange<Acceleration> SecondAcceleration { get; }

    private protected override ResultSheet Figures() => new("What a collision shares out", $"two rigid bodies; {ranges}", [.. Lines()]) { Basis = $"reduced mass {ReducedMass}, closing speed {ClosingSpeed}" };

    internal IEnumerable<ResultLine> Lines() =>
    [
        .. ClosingSpeed.Lines("closing speed"), .. Impulse.Lines("impulse on each"), .. EnergyLost.Lines("energy lost"),
        .. MeanForce.Lines("mean force"), .. PeakForce.Lines("peak force, half-sine to triangular"),
    ];

    private static QuantityRange<Force> Newtons(double low, double high) => new(Force.FromNewtons(low), Force.FromNewtons(high));
}
