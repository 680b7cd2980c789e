using System.Globalization;
using Analytics.Metrics.Motion;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Checks;
using Analytics.Season.Columns;

namespace Analytics.Season.Clips;

/// <summary>
/// Tells a wrong calibration length by the size of the body: thigh, shank and trunk (shoulder to hip) are 0.245, 0.246 and 0.288 of the stature ([winter2009], after Drillis and Contini;
/// figures from memory). The tolerances are wide for build, for limbs that point at the camera and for parallax; common practice, no source.
/// </summary>
internal static class ScaleCheck
{
    private const double UsualStature = 1.85;

    private static readonly (MarkerRole From, MarkerRole To, double Share)[] Segments =
    [
        (MarkerRole.Hip, MarkerRole.Knee, 0.245), (MarkerRole.Knee, MarkerRole.Ankle, 0.246), (MarkerRole.Shoulder, MarkerRole.Hip, 0.288),
        (MarkerRole.FarHip, MarkerRole.FarKnee, 0.245), (MarkerRole.FarKnee, MarkerRole.FarAnkle, 0.246), (MarkerRole.FarShoulder, MarkerRole.FarHip, 0.288),
    ];

    /// <summary>A body of impossible size; null when it fits or cannot be measured.</summary>
    public static CellFault? Fault(DigitisedClip clip, Athlete athlete, CalibrationSettings calibration)
    {
        var ratios = Segments.Select(s => Length(clip, s.From, s.To) / s.Share).Where(double.IsFinite).ToList();
        if (ratios.Count is 0) return null;
        var measured = Middle.Of(ratios);
        var stature = athlete.Stature?.Metres;
        var (low, high) = stature is null ? (0.55, 1.6) : (0.7, 1.4);
        var ratio = measured / (stature ?? UsualStature);
        if (ratio >= low && ratio <= high) return null;
        var known = stature is { } metres ? Invariant($"the {metres:0.00} m of athletes.csv") : Invariant($"a usual {UsualStature:0.00} m (athletes.csv has no stature)");
        return new CellFault("", "", string.Create(CultureInfo.InvariantCulture, $"thigh, shank and trunk are those of a body {measured:0.00##} m tall, {ratio:0.0##} of {known}; allowed {low:0.##} to {high:0.##}. The calibration length of {CellText.Number(calibration.Length.Metres / calibration.Unit.ToSi)} {calibration.Unit.Symbol}, or its ends, look wrong"), Remedy(ratio, calibration));
    }

    private static string Remedy(double ratio, CalibrationSettings calibration)
    {
        var typed = calibration.Unit;
        var meant = UnitSets.Calibrations.Where(u => u != typed).Select(u => (Unit: u, Off: Math.Abs(Math.Log(ratio * u.ToSi / typed.ToSi)))).MinBy(u => u.Off);
        return meant.Off < Math.Log(1.25)
            ? $"It looks like {meant.Unit.Symbol}: if it is, name the key length_{meant.Unit.Symbol} under \"calibration\" in season.json. Else check which points are its ends."
            : "Check the length under \"calibration\" in season.json, and which points are its ends.";
    }

    private static double Length(DigitisedClip clip, MarkerRole from, MarkerRole to)
    {
        if (clip.Find(from) is not { } a || clip.Find(to) is not { } b) return double.NaN;
        return Middle.Of(Enumerable.Range(0, clip.Count).Where(i => a[i] is not null && b[i] is not null).Select(i => double.Hypot(a[i]!.Value.XMetres - b[i]!.Value.XMetres, a[i]!.Value.YMetres - b[i]!.Value.YMetres)));
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
