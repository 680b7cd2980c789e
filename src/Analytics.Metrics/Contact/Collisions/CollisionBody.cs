using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>One of the two bodies of a collision, taken as one rigid mass.</summary>
public sealed record CollisionBody
{
    /// <summary>Makes a body.</summary>
    /// <param name="mass">Mass with equipment, above 0.</param>
    /// <param name="speed">Speed; along one line with its sign, with a heading 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A mass of 0 or less.</exception>
    public CollisionBody(Mass mass, Speed speed) => (Mass, Speed) = (Require.Positive(mass, "mass of a body"), speed);

    /// <summary>Mass.</summary>
    public Mass Mass { get; }

    /// <summary>Speed.</summary>
    public Speed Speed { get; }

    /// <summary>Mass times speed.</summary>
    public Momentum Momentum => Mass * Speed;
}
