using Analytics.Quantities;

namespace Analytics.Metrics.Load;

/// <summary>
/// Session load: the rating of the whole session times its minutes, in arbitrary units (AU) [foster2001]. Ask about half an hour after the end, in private
/// (timing from memory). No error of a rating is known; loads of two athletes are two scales.
/// </summary>
public static class SessionRpe
{
    /// <summary>Lowest rating.</summary>
    public const double Lowest = 0;

    /// <summary>Highest rating.</summary>
    public const double Highest = 10;

    /// <summary>The worded points of the scale, by rating [foster2001]; 6, 8 and 9 have no words.</summary>
    public static IReadOnlyList<ExertionAnchor> Anchors { get; } =
    [
        new(0, "rest"), new(1, "very, very easy"), new(2, "easy"), new(3, "moderate"), new(4, "somewhat hard"), new(5, "hard"), new(7, "very hard"), new(10, "maximal"),
    ];

    /// <summary>Session load in AU; null, never 0, when the rating or the length is not known.</summary>
    /// <param name="rating">Rating of the whole session, 0 to 10; null when not given.</param>
    /// <param name="length">Length of the session, 0 min or more; null when not noted.</param>
    /// <exception cref="ArgumentOutOfRangeException">A rating outside 0 to 10, or a negative length.</exception>
    public static double? Load(double? rating, Duration? length)
    {
        if (rating is { } r) Checked(r);
        if (length is { } l) Require.NotNegative(l, "The length of a session", nameof(length));
        return rating * length?.Minutes;
    }

    internal static double Checked(double rating) => rating is >= Lowest and <= Highest
        ? rating
        : throw new ArgumentOutOfRangeException(nameof(rating), rating, FormattableString.Invariant($"The rating of a session is {rating}; allowed: {Lowest} to {Highest}."));
}

/// <summary>A point of the scale that has words.</summary>
/// <param name="Rating">The rating.</param>
/// <param name="Words">What it means.</param>
public sealed record ExertionAnchor(int Rating, string Words);
