using System.Globalization;

namespace Analytics.Metrics.Trials;

/// <summary>Whether the body mass behind a value is still good.</summary>
public static class BodyMassAge
{
    /// <summary>A body mass older than this many days is remarked on; our choice, no source.</summary>
    public const int StaleAfterDays = 14;

    /// <summary>A remark for a value made with the day's body mass; null while the mass is fresh enough.</summary>
    /// <param name="day">The athlete's day.</param>
    public static string? Remark(AthleteDay day)
        => day.BodyMassDate is { } weighed && day.Date.DayNumber - weighed.DayNumber > StaleAfterDays
            ? string.Create(CultureInfo.InvariantCulture, $"body mass from {weighed:d MMMM yyyy}")
            : null;
}
