using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>What nobody measures in a tackle and what is therefore given as a range: how much the bodies rebound and how long the contact lasts.</summary>
public sealed record CollisionRanges
{
    /// <summary>Makes ranges.</summary>
    /// <param name="restitutionLow">Lowest coefficient of restitution, 0 to 1: 0 when they stay together.</param>
    /// <param name="restitutionHigh">Highest, not below the lowest, at most 1.</param>
    /// <param name="contactShort">Shortest time of contact, above 0.</param>
    /// <param name="contactLong">Longest, not below the shortest.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public CollisionRanges(double restitutionLow, double restitutionHigh, Duration contactShort, Duration contactLong)
    {
        if (restitutionLow is not (>= 0 and <= 1)) throw Out(nameof(restitutionLow), restitutionLow, "the lowest restitution must lie between 0 and 1");
        if (!(restitutionHigh >= restitutionLow && restitutionHigh <= 1)) throw Out(nameof(restitutionHigh), restitutionHigh, "the highest restitution must lie between the lowest and 1");
        (RestitutionLow, RestitutionHigh, ContactShort) = (restitutionLow, restitutionHigh, Require.Positive(contactShort, "time of contact"));
        ContactLong = contactLong >= contactShort ? contactLong
            : throw new ArgumentOutOfRangeException(nameof(contactLong), contactLong, $"the longest time of contact must not be below the shortest, {contactShort}; got {contactLong}.");
    }

    /// <summary>Restitution 0 to 0.3 and contact of 0.1 to 0.4 s, for a tackle with the shoulder: common practice, no source.</summary>
    public static CollisionRanges Tackle { get; } = new(0, 0.3, Duration.FromSeconds(0.1), Duration.FromSeconds(0.4));

    /// <summary>Lowest restitution.</summary>
    public double RestitutionLow { get; }

    /// <summary>Highest restitution.</summary>
    public double RestitutionHigh { get; }

    /// <summary>Shortest contact.</summary>
    public Duration ContactShort { get; }

    /// <summary>Longest contact.</summary>
    public Duration ContactLong { get; }

    /// <summary>The ranges in words.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"restitution {RestitutionLow} to {RestitutionHigh}, contact {ContactShort.Seconds} to {ContactLong.Seconds} s");

    private static ArgumentOutOfRangeException Out(string name, double value, string message)
        => new(name, value, string.Create(CultureInfo.InvariantCulture, $"{message}; got {value}."));
}
