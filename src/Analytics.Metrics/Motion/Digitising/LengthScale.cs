using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>Metres to a pixel in the calibrated plane, with its doubt.</summary>
public sealed record LengthScale
{
    private LengthScale(double metresPerPixel, double relativeSd, double alongPixels, double acrossPixels)
        => (MetresPerPixel, RelativeSd, AlongPixels, AcrossPixels) = (metresPerPixel, relativeSd, alongPixels, acrossPixels);

    /// <summary>Metres to a pixel for a camera square to the run.</summary>
    public double MetresPerPixel { get; }

    /// <summary>√2·s/B: both ends of the length were read with SD s.</summary>
    public double RelativeSd { get; }

    /// <summary>The calibration length along the run in pixels.</summary>
    internal double AlongPixels { get; }

    /// <summary>The calibration length upwards in pixels.</summary>
    internal double AcrossPixels { get; }

    /// <summary>A scale from a length of known size in the picture (a stick, two marks).</summary>
    /// <param name="trueLength">Its size, above 0.</param>
    /// <param name="alongPixels">Its extent along the picture in pixels.</param>
    /// <param name="acrossPixels">Its extent across (up) the picture in pixels.</param>
    /// <param name="endSdPixels">SD with which one end is read, in pixels, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges, or both extents 0.</exception>
    public static LengthScale FromLength(Length trueLength, double alongPixels, double acrossPixels, double endSdPixels)
    {
        var pixels = Math.Sqrt((alongPixels * alongPixels) + (acrossPixels * acrossPixels));
        if (!(pixels > 0 && double.IsFinite(pixels)))
            throw new ArgumentOutOfRangeException(nameof(alongPixels), pixels, string.Create(CultureInfo.InvariantCulture, $"the calibration length must be above 0 px in the picture; got {pixels} px. Digitise its two ends at different places."));
        if (!(endSdPixels >= 0 && double.IsFinite(endSdPixels)))
            throw new ArgumentOutOfRangeException(nameof(endSdPixels), endSdPixels, string.Create(CultureInfo.InvariantCulture, $"the SD of an end must be 0 px or more; got {endSdPixels} px."));
        return new(Require.Positive(trueLength, "calibration length").Metres / pixels, Math.Sqrt(2) * endSdPixels / pixels, alongPixels, acrossPixels);
    }

    /// <summary>A scale from the two ends as digitised, in one frame or in several: the mean extent, its SD less by the root of the frames both ends were read in.</summary>
    /// <param name="trueLength">Its size, above 0.</param>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <param name="endSdPixels">SD with which one end is read once, in pixels.</param>
    /// <exception cref="ArgumentException">No frame in which both ends were digitised.</exception>
    public static LengthScale FromEnds(Length trueLength, PixelTrack from, PixelTrack to, double endSdPixels)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        var (n, along, across) = (0, 0.0, 0.0);
        for (var i = 0; i < Math.Min(from.Count, to.Count); i++)
        {
            if (double.IsNaN(from.X[i]) || double.IsNaN(to.X[i])) continue;
            (n, along, across) = (n + 1, along + to.X[i] - from.X[i], across + to.Y[i] - from.Y[i]);
        }
        if (n == 0) throw new ArgumentException($"Markers '{from.Name}' and '{to.Name}' were never digitised in the same frame; the calibration length needs both ends.", nameof(to));
        return FromLength(trueLength, along / n, across / n, endSdPixels / Math.Sqrt(n));
    }

    /// <summary>Metres to an upright pixel when the run is foreshortened by a factor: the part of the length along the run looked too short.</summary>
    internal double UprightMetresPerPixel(double foreshortening)
    {
        var apparent = Math.Sqrt((AlongPixels * AlongPixels) + (AcrossPixels * AcrossPixels));
        var square = Math.Sqrt((AlongPixels * AlongPixels / (foreshortening * foreshortening)) + (AcrossPixels * AcrossPixels));
        return MetresPerPixel * apparent / square;
    }
}
