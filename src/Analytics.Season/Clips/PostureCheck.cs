using System.Globalization;
using Analytics.Metrics.Motion;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Clips;

/// <summary>Tells whether the axes of a clip are those the season says: a body stands up and runs along. The limits are common practice, no source.</summary>
internal static class PostureCheck
{
    /// <summary>Swapped axes or a y that counts the other way; null when neither.</summary>
    /// <param name="body">The landmarks.</param>
    /// <param name="video">What the season says.</param>
    /// <param name="from">Frame of first movement.</param>
    /// <param name="to">Frame of contact.</param>
    public static CellFault? Axes(ClipBody body, VideoSettings video, int from, int to)
    {
        if (body.Ends is not { } ends || ends.Low.To(ends.High) is not { } up) return null;
        var rise = video.YAxis == YAxis.Up ? up.Y : -up.Y;
        var size = double.Hypot(up.X, up.Y);
        var way = body.Way(from, to);
        if (Math.Abs(up.X) > 2 * Math.Abs(up.Y))
            return Swapped($"the line from '{Name(ends.Low)}' to '{Name(ends.High)}' lies along x ({Px(up.X)} px in x, {Px(up.Y)} px in y), so the body seems to lie");
        if (way is { } moved && (IsMostlyUp(moved, size / 2, 1) || IsMostlyUp(moved, size / 5, 3)))
            return Swapped($"'{Name(body.Carrier!)}' moves mostly along y ({Px(moved.X)} px in x, {Px(moved.Y)} px in y), so the player seems to run up or down the picture");
        if (rise >= -0.3 * size) return null;
        var said = video.YAxis == YAxis.Up ? "up" : "down";
        return new CellFault("y_px", "", $"'{Name(ends.High)}' is below '{Name(ends.Low)}' (by {Px(Math.Abs(up.Y))} px) with y counted {said}: y seems to count the other way", $"Set \"y_axis\": \"{(said is "up" ? "down" : "up")}\" under \"video\" in season.json, if that holds for all clips; else export this clip like the others.");
    }

    /// <summary>The direction of travel, typed or found; null with a fault when they contradict or cannot be told.</summary>
    public static Travel? Way(ClipBody body, Travel? typed, bool isChecked, int from, int to, out CellFault? fault)
    {
        fault = null;
        var size = body.Ends is { } ends && ends.Low.To(ends.High) is { } up ? double.Hypot(up.X, up.Y) : 0;
        var way = body.Way(from, to)?.X ?? 0;
        if (typed is { } said)
        {
            var forward = said == Travel.Right ? way : -way;
            if (size > 0 && forward < -size / 8 && !isChecked)
                fault = new CellFault("x_px", "", $"the row says travel {said.ToString().ToLowerInvariant()}, but '{Name(body.Carrier!)}' moves {Px(Math.Abs(way))} px to the other side", "Correct travel in the row, or empty it: then it is found from the points.");
            return fault is null ? said : null;
        }

        if (Math.Abs(way) > size / 10 && way != 0) return way > 0 ? Travel.Right : Travel.Left;
        fault = new CellFault("x_px", "", "the points move too little to tell which way the player runs", "Write right or left in the column travel of the row.");
        return null;
    }

    /// <summary>A point outside the picture; null when there is none.</summary>
    public static CellFault? Picture(ClipBody body, VideoSettings video)
    {
        if (video.PictureHeightPixels is not { } height) return null;
        foreach (var marker in body.Markers)
        {
            foreach (var point in marker.Points.Points)
            {
                if (point.Y >= -0.1 * height && point.Y <= 1.1 * height) continue;
                return new CellFault("y_px", CellText.Number(point.Y), $"line {point.Line}: '{Name(marker)}' at frame {point.Frame} has y = {CellText.Number(point.Y)} px, outside a picture {CellText.Number(height)} px high", "Correct picture_height_px under \"video\" in season.json, or the point.");
            }
        }

        return null;
    }

    private static bool IsMostlyUp((double X, double Y) way, double least, double times) => Math.Abs(way.Y) > least && Math.Abs(way.Y) > times * Math.Abs(way.X);

    private static CellFault Swapped(string what)
        => new("x_px", "", what + ": x and y look swapped, or the picture is turned by a quarter", "Swap the columns x_px and y_px, or turn the clip and digitise it again.");

    private static string Name(PixelMarker marker) => CellText.Show(marker.Points.Written);

    private static string Px(double pixels) => Math.Round(pixels).ToString(CultureInfo.InvariantCulture);
}
