using System.Globalization;

namespace Analytics.Metrics.Strength;

/// <summary>Rating of perceived exertion (RPE) by repetitions in reserve (RIR): RIR = 10 − RPE [zourdos2016].</summary>
/// <remarks>Half steps are usual: 9.5 means between none and one in reserve. People tend to leave one more than they say [halperin2022].</remarks>
public static class PerceivedEffort
{
    /// <summary>Repetitions in reserve from a rating.</summary>
    /// <param name="rating">RPE, 1 to 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 10.</exception>
    public static double ReserveFromRating(double rating) => rating is >= 1 and <= 10 ? 10 - rating
        : throw new ArgumentOutOfRangeException(nameof(rating), rating, string.Create(CultureInfo.InvariantCulture, $"RPE must be 1 to 10; got {rating}."));

    /// <summary>Rating from repetitions in reserve.</summary>
    /// <param name="reserve">Repetitions in reserve, 0 to 9.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 9.</exception>
    public static double RatingFromReserve(double reserve) => reserve is >= 0 and <= 9 ? 10 - reserve
        : throw new ArgumentOutOfRangeException(nameof(reserve), reserve, string.Create(CultureInfo.InvariantCulture, $"Repetitions in reserve must be 0 to 9; got {reserve}."));
}
