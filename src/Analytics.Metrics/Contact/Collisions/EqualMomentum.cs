using Analytics.Quantities;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>The speed at which a player carries the momentum of another one: mass ratio times the other's speed. It says what speed is worth against mass, not what a contact does.</summary>
public sealed record EqualMomentum : CautionedResult
{
    private EqualMomentum(Mass mass, CollisionBody other) : base(CollisionCaution.Standard) => (Mass, Other) = (mass, other);

    /// <summary>The player's mass.</summary>
    public Mass Mass { get; }

    /// <summary>The other one.</summary>
    public CollisionBody Other { get; }

    /// <summary>Speed needed.</summary>
    public Speed SpeedNeeded => Other.Momentum / Mass;

    /// <summary>The momentum both then carry.</summary>
    public Momentum Momentum => Other.Momentum;

    /// <summary>Energy of motion the player then carries; it is larger than the other's by the ratio of masses when the player is lighter.</summary>
    public Energy Energy => Energy.FromJoules(Momentum.KilogramMetresPerSecond * SpeedNeeded.MetresPerSecond / 2);

    /// <summary>Energy of motion of the other.</summary>
    public Energy OtherEnergy => Energy.FromJoules(Momentum.KilogramMetresPerSecond * Other.Speed.MetresPerSecond / 2);

    /// <summary>The match for another player's mass and speed.</summary>
    /// <param name="mass">The player's mass, above 0.</param>
    /// <param name="other">The other one, speed 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static EqualMomentum Of(Mass mass, CollisionBody other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Require.NotNegative(other.Speed, "speed");
        return new(Require.Positive(mass, "mass of a body"), other);
    }

    private protected override ResultSheet Figures() => new("Equal momentum", "m₂·u₂/m₁",
    [
        new("speed needed", SpeedNeeded.MetresPerSecond, "m/s"),
        new("speed needed", SpeedNeeded.MilesPerHour, "mph"),
        new("momentum of each", Momentum.KilogramMetresPerSecond, "kg·m/s"),
        new("energy of the player", Energy.Joules, "J"),
        new("energy of the other", OtherEnergy.Joules, "J"),
    ]) { Basis = $"{Mass} against {Other.Mass} at {Other.Speed}" };
}
