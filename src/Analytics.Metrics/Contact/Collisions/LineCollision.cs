using Analytics.Quantities;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>A collision along one line; every figure a range.</summary>
public sealed record LineCollision : CautionedResult
{
    private readonly CollisionRanges ranges;

    private LineCollision(CollisionBody first, CollisionBody second, CollisionRanges ranges, double firstDoubt, double secondDoubt) : base(CollisionCaution.Standard)
    {
        (First, Second, this.ranges) = (first, second, ranges);
        double m1 = first.Mass.Kilograms, m2 = second.Mass.Kilograms, u1 = first.Speed.MetresPerSecond, u2 = second.Speed.MetresPerSecond;
        Impact = new(m1, m2, u1 - u2 - firstDoubt - secondDoubt, u1 - u2 + firstDoubt + secondDoubt, ranges);
        (double One, double Two)[] speeds = [.. Ends(u1, firstDoubt).SelectMany(a => Ends(u2, secondDoubt).Select(b => (a, b)))];
        double[] restitutions = [ranges.RestitutionLow, ranges.RestitutionHigh];
        FirstAfter = QuantityRange<Speed>.Of(speeds.SelectMany(u => restitutions.Select(e => ((m1 * u.One) + (m2 * u.Two) - (m2 * e * (u.One - u.Two))) / (m1 + m2))));
        SecondAfter = QuantityRange<Speed>.Of(speeds.SelectMany(u => restitutions.Select(e => ((m1 * u.One) + (m2 * u.Two) + (m1 * e * (u.One - u.Two))) / (m1 + m2))));
        CommonSpeed = QuantityRange<Speed>.Of(speeds.Select(u => ((m1 * u.One) + (m2 * u.Two)) / (m1 + m2)));
        EnergyBefore = new(Energy.FromJoules((m1 * Least(u1, firstDoubt)) + (m2 * Least(u2, secondDoubt))), Energy.FromJoules((m1 * Most(u1, firstDoubt)) + (m2 * Most(u2, secondDoubt))));

        static double[] Ends(double u, double doubt) => doubt == 0 ? [u] : [u - doubt, u + doubt];
        static double Least(double u, double doubt) => Math.Pow(Math.Max(0, Math.Abs(u) - doubt), 2) / 2;
        static double Most(double u, double doubt) => Math.Pow(Math.Abs(u) + doubt, 2) / 2;
    }

    /// <summary>The body behind (or coming from the left).</summary>
    public CollisionBody First { get; }

    /// <summary>The other body.</summary>
    public CollisionBody Second { get; }

    /// <summary>Closing speed, impulse, energy lost, forces.</summary>
    public CollisionFigures Impact { get; }

    /// <summary>Speed of the first body afterwards.</summary>
    public QuantityRange<Speed> FirstAfter { get; }

    /// <summary>Speed of the second body afterwards.</summary>
    public QuantityRange<Speed> SecondAfter { get; }

    /// <summary>Speed of their common centre of mass, the same before and after.</summary>
    public QuantityRange<Speed> CommonSpeed { get; }

    /// <summary>Energy of motion before.</summary>
    public QuantityRange<Energy> EnergyBefore { get; }

    /// <summary>A collision along one line, forward positive.</summary>
    /// <param name="first">The body behind: it must be the faster one.</param>
    /// <param name="second">The body in front; its speed is negative when it comes towards the first, 0 for a bag.</param>
    /// <param name="ranges">Restitution and time of contact; <see cref="CollisionRanges.Tackle"/> when left out.</param>
    /// <param name="firstDoubt">How far the first speed may be off either way (half its interval), 0 or more.</param>
    /// <param name="secondDoubt">The same for the second.</param>
    /// <exception cref="ArgumentException">Bodies that do not close, or that may not when the doubts are counted.</exception>
    public static LineCollision Of(CollisionBody first, CollisionBody second, CollisionRanges? ranges = null, Speed firstDoubt = default, Speed secondDoubt = default)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        var doubt = Require.NotNegative(firstDoubt, "doubt of a speed") + Require.NotNegative(secondDoubt, "doubt of a speed");
        if (!(first.Speed - second.Speed > doubt))
            throw new ArgumentException($"The bodies do not meet for certain: the first runs at {first.Speed}, the second at {second.Speed}, forward positive{(doubt > Speed.Zero ? $", with doubts of {doubt} together" : "")}. The first must be the faster one; a player running towards it has a negative speed.", nameof(second));
        return new(first, second, ranges ?? CollisionRanges.Tackle, firstDoubt.MetresPerSecond, secondDoubt.MetresPerSecond);
    }

    private protected override ResultSheet Figures() => new("Collision along one line", $"two rigid bodies; {ranges}",
    [
        .. Impact.Lines(), .. FirstAfter.Lines("speed of the first afterwards"), .. SecondAfter.Lines("speed of the second afterwards"),
    ]) { Basis = $"{First.Mass} at {First.Speed} and {Second.Mass} at {Second.Speed}, forward positive" };
}
