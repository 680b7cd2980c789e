using Analytics.Quantities;

namespace Analytics.Metrics.Load;

/// <summary>What one athlete did in one training session. What is null was not written down: not known, never 0.</summary>
/// <param name="Date">Day of the session.</param>
/// <param name="Length">Length, 0 min or more.</param>
/// <param name="Rating">Rating of the whole session, 0 to 10.</param>
/// <param name="JumpContacts">Ground contacts of jumps, 0 or more.</param>
public sealed record SessionWork(DateOnly Date, Duration? Length = null, double? Rating = null, int? JumpContacts = null)
{
    /// <summary>The sets lifted; empty when none was written down.</summary>
    public IReadOnlyList<ExerciseSets> Exercises { get; init; } = [];

    /// <summary>Session load in AU; null when rating or length is not known [foster2001].</summary>
    /// <exception cref="ArgumentOutOfRangeException">A rating outside 0 to 10, or a negative length.</exception>
    public double? LoadAu => SessionRpe.Load(Rating, Length);
}
