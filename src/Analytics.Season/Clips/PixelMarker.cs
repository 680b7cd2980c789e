using Analytics.Metrics.Motion;
using Analytics.Season.Checks;

namespace Analytics.Season.Clips;

/// <summary>One landmark in pixels, one sample a frame; NaN in both coordinates where it was not digitised.</summary>
internal sealed class PixelMarker
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly int[] lines;

    /// <summary>Spreads points over the frames from the first to the last.</summary>
    public PixelMarker(MarkerPoints points, MarkerRole role, int first, int last)
    {
        (Points, Role, First) = (points, role, first);
        (x, y, lines) = (new double[last - first + 1], new double[last - first + 1], new int[last - first + 1]);
        Array.Fill(x, double.NaN);
        Array.Fill(y, double.NaN);
        foreach (var point in points.Points) (x[point.Frame - first], y[point.Frame - first], lines[point.Frame - first]) = (point.X, point.Y, point.Line);
    }

    /// <summary>As read.</summary>
    public MarkerPoints Points { get; }

    /// <summary>Landmark.</summary>
    public MarkerRole Role { get; }

    /// <summary>Frame of the first sample.</summary>
    public int First { get; }

    /// <summary>x by sample, px.</summary>
    public ReadOnlySpan<double> X => x;

    /// <summary>y by sample, px, as in the file.</summary>
    public ReadOnlySpan<double> Y => y;

    /// <summary>Samples digitised.</summary>
    public int Count => x.Count(v => !double.IsNaN(v));

    /// <summary>The track.</summary>
    public PixelTrack Track => new(Points.Written, Role, x, y);

    /// <summary>Takes the point of a frame out.</summary>
    /// <returns>Its line and place.</returns>
    public (int Line, double X, double Y) Clear(int frame)
    {
        var i = frame - First;
        var was = (lines[i], x[i], y[i]);
        (x[i], y[i]) = (double.NaN, double.NaN);
        return was;
    }

    /// <summary>Middle way from this landmark to another over the frames that have both; null when none has.</summary>
    public (double X, double Y)? To(PixelMarker other)
    {
        var both = Enumerable.Range(0, x.Length).Where(i => !double.IsNaN(x[i]) && !double.IsNaN(other.x[i])).ToList();
        return both.Count is 0 ? null : (Middle.Of(both.Select(i => other.x[i] - x[i])), Middle.Of(both.Select(i => other.y[i] - y[i])));
    }

    /// <summary>Way from one frame to another, each the middle of up to 5 samples about it; null when the frames are not covered.</summary>
    public (double X, double Y)? Way(int from, int to)
        => About(from) is { } start && About(to) is { } end ? (end.X - start.X, end.Y - start.Y) : null;

    private (double X, double Y)? About(int frame)
    {
        var near = Enumerable.Range(frame - First - 2, 5).Where(i => i >= 0 && i < x.Length && !double.IsNaN(x[i])).ToList();
        return near.Count is 0 ? null : (Middle.Of(near.Select(i => x[i])), Middle.Of(near.Select(i => y[i])));
    }
}
