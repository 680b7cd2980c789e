using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// What a camera shows wrongly when the athlete does not run in the calibrated plane. Pinhole camera, L from the calibrated plane, athlete nearer by d (negative: farther).
/// </summary>
public static class Parallax
{
    /// <summary>Apparent over true length: L/(L − d).</summary>
    /// <param name="cameraDistance">L, above 0.</param>
    /// <param name="nearer">d, below L; negative when the athlete is farther than the calibrated plane.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static double Magnification(Length cameraDistance, Length nearer)
    {
        var l = Require.Positive(cameraDistance, "camera distance").Metres;
        return nearer.Metres < l ? l / (l - nearer.Metres) : throw new ArgumentOutOfRangeException(nameof(nearer), nearer,
            string.Create(CultureInfo.InvariantCulture, $"the athlete cannot be nearer than the camera, {cameraDistance} away; got {nearer}."));
    }

    /// <summary>How far before (towards the camera's axis) an athlete truly is who appears to cross a mark: X·d/L.</summary>
    /// <param name="markOffAxis">X, distance of the mark from the camera's axis along the run; the sign is kept.</param>
    /// <param name="cameraDistance">L, above 0.</param>
    /// <param name="nearer">d, below L.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static Length MarkError(Length markOffAxis, Length cameraDistance, Length nearer)
    {
        _ = Magnification(cameraDistance, nearer);
        return Length.FromMetres(markOffAxis.Metres * nearer.Metres / cameraDistance.Metres);
    }

    /// <summary>cos A: how short a length along the run looks when the camera is not square to it by the angle A.</summary>
    /// <param name="cameraAngle">A, between −80° and 80°.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static double Foreshortening(Angle cameraAngle) => Math.Abs(cameraAngle.Degrees) <= 80
        ? Math.Cos(cameraAngle.Radians)
        : throw new ArgumentOutOfRangeException(nameof(cameraAngle), cameraAngle, string.Create(CultureInfo.InvariantCulture, $"the camera may be off square by at most 80°; got {cameraAngle.Degrees}°."));
}
