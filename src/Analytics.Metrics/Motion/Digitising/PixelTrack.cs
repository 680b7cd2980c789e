namespace Analytics.Metrics.Motion;

/// <summary>One marker as digitised: pixels of the picture, one sample a frame.</summary>
public sealed class PixelTrack
{
    private readonly double[] x;
    private readonly double[] y;

    /// <summary>Makes a track.</summary>
    /// <param name="name">Name of the marker in the file.</param>
    /// <param name="role">Landmark it stands for.</param>
    /// <param name="xPixels">Along the picture, from the left; NaN (in both) where a frame was not digitised.</param>
    /// <param name="yPixels">Across the picture, from the top or from the bottom, as <see cref="ClipGeometry.YAxis"/> says.</param>
    /// <exception cref="ArgumentException">Unequal lengths, none, or one coordinate without the other.</exception>
    public PixelTrack(string name, MarkerRole role, ReadOnlySpan<double> xPixels, ReadOnlySpan<double> yPixels)
    {
        (x, y) = TrackSamples.Checked(name, xPixels, yPixels, "px");
        (Name, Role) = (name, role);
    }

    /// <summary>Name of the marker in the file.</summary>
    public string Name { get; }

    /// <summary>Landmark it stands for.</summary>
    public MarkerRole Role { get; }

    /// <summary>Samples, digitised or not.</summary>
    public int Count => x.Length;

    /// <summary>x in pixels by sample; null where the frame was not digitised.</summary>
    public IReadOnlyList<double?> XPixels => new BlankSeries(x);

    /// <summary>y in pixels by sample; null where the frame was not digitised.</summary>
    public IReadOnlyList<double?> YPixels => new BlankSeries(y);

    internal ReadOnlySpan<double> X => x;

    internal ReadOnlySpan<double> Y => y;
}
