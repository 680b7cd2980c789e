using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>
/// A camera that exposes its rows one after another: what happens at row r of H is seen r/H of the read-out time after the frame began. Two events at different heights
/// of the picture are so read closer together or further apart than they were. Phones read out in about 5 to 30 ms (from memory).
/// </summary>
public sealed record RollingShutter
{
    /// <summary>Makes it.</summary>
    /// <param name="readOut">Time from the first row to the last, 0 or more; 0 for a camera that exposes all rows at once.</param>
    /// <param name="pictureHeightPixels">H, rows of the picture, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public RollingShutter(Duration readOut, double pictureHeightPixels)
    {
        ReadOut = Require.NotNegative(readOut, "read-out time");
        PictureHeightPixels = pictureHeightPixels > 0 && double.IsFinite(pictureHeightPixels) ? pictureHeightPixels
            : throw new ArgumentOutOfRangeException(nameof(pictureHeightPixels), pictureHeightPixels,
                string.Create(CultureInfo.InvariantCulture, $"the picture height must be above 0 px; got {pictureHeightPixels} px."));
    }

    /// <summary>Time from the first row to the last.</summary>
    public Duration ReadOut { get; }

    /// <summary>H, rows of the picture.</summary>
    public double PictureHeightPixels { get; }

    /// <summary>How much later than the beginning of its frame a row is exposed: r/H of the read-out time.</summary>
    /// <param name="row">r, from the top, 0 to H.</param>
    /// <exception cref="ArgumentOutOfRangeException">A row outside the picture.</exception>
    public Duration DelayAt(double row) => row >= 0 && row <= PictureHeightPixels
        ? ReadOut * (row / PictureHeightPixels)
        : throw new ArgumentOutOfRangeException(nameof(row), row,
            string.Create(CultureInfo.InvariantCulture, $"a row must lie between 0 and the picture height, {PictureHeightPixels} px; got {row}."));
}
