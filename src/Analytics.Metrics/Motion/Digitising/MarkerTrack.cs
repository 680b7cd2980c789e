namespace Analytics.Metrics.Motion;

/// <summary>One marker in the plane of the run: x forward and y up in m, one sample a frame, gaps kept.</summary>
public sealed class MarkerTrack
{
    private readonly double[] x;
    private readonly double[] y;
    private readonly bool[] filled;

    /// <summary>Makes a track.</summary>
    /// <param name="name">Name of the marker.</param>
    /// <param name="role">Landmark it stands for.</param>
    /// <param name="xMetres">Forward; NaN (in both) for a gap.</param>
    /// <param name="yMetres">Up; NaN (in both) for a gap.</param>
    /// <param name="filled">Which samples were filled in, not digitised; none when empty.</param>
    /// <exception cref="ArgumentException">Unequal lengths, none, one coordinate without the other, or a filled gap.</exception>
    public MarkerTrack(string name, MarkerRole role, ReadOnlySpan<double> xMetres, ReadOnlySpan<double> yMetres, ReadOnlySpan<bool> filled = default)
    {
        (x, y) = TrackSamples.Checked(name, xMetres, yMetres, "m");
        if (filled.Length != 0 && filled.Length != x.Length)
            throw new ArgumentException($"Marker '{name}' has {x.Length} samples and {filled.Length} marks of filled ones; give one a sample or none.", nameof(filled));
        this.filled = filled.Length == 0 ? new bool[x.Length] : filled.ToArray();
        (Name, Role, Pieces) = (name, role, Split(x));
    }

    /// <summary>The same marker after a filter; the arrays are taken over, finite inside the pieces and NaN in both coordinates outside.</summary>
    internal MarkerTrack(MarkerTrack digitised, double[] x, double[] y, IReadOnlyList<TrackPiece> pieces, LowPass smoothing)
        => (this.x, this.y, filled, Name, Role, Pieces, Smoothing) = (x, y, digitised.filled, digitised.Name, digitised.Role, pieces, smoothing);

    private MarkerTrack(MarkerTrack track, string name)
        => (x, y, filled, Name, Role, Pieces, Smoothing) = (track.x, track.y, track.filled, name, track.Role, track.Pieces, track.Smoothing);

    /// <summary>Name of the marker.</summary>
    public string Name { get; }

    /// <summary>Landmark it stands for.</summary>
    public MarkerRole Role { get; }

    /// <summary>The same track under another name.</summary>
    /// <param name="name">The other name.</param>
    public MarkerTrack Named(string name) => new(this, name);

    /// <summary>Samples, gaps included.</summary>
    public int Count => x.Length;

    /// <summary>The stretches without a gap, in order.</summary>
    public IReadOnlyList<TrackPiece> Pieces { get; }

    /// <summary>Samples that were filled in.</summary>
    public int FilledCount => filled.Count(f => f);

    /// <summary>Samples without a point.</summary>
    public int MissingCount => Count - Pieces.Sum(p => p.Length);

    /// <summary>The filter the track went through; null for points as digitised.</summary>
    public LowPass? Smoothing { get; init; }

    /// <summary>x in m by sample; null in a gap.</summary>
    public IReadOnlyList<double?> XMetres => new BlankSeries(x);

    /// <summary>y in m by sample; null in a gap.</summary>
    public IReadOnlyList<double?> YMetres => new BlankSeries(y);

    /// <summary>The point at a sample; null in a gap.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such sample.</exception>
    public PlanePoint? this[int index] => double.IsNaN(x[Checked(index)]) ? null : new(x[index], y[index]);

    /// <summary>Whether a sample was filled in.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such sample.</exception>
    public bool IsFilled(int index) => filled[Checked(index)];

    internal ReadOnlySpan<double> X => x;

    internal ReadOnlySpan<double> Y => y;

    internal ReadOnlySpan<bool> Filled => filled;

    private int Checked(int index) => (uint)index < (uint)Count
        ? index
        : throw new ArgumentOutOfRangeException(nameof(index), index, $"marker '{Name}' has samples 0 to {Count - 1}; got {index}.");

    internal static TrackPiece[] Split(ReadOnlySpan<double> x)
    {
        var pieces = new List<TrackPiece>();
        for (var i = 0; i < x.Length; i++)
        {
            if (double.IsNaN(x[i])) continue;
            var start = i;
            while (i < x.Length && !double.IsNaN(x[i])) i++;
            pieces.Add(new(start, i - start));
        }
        return [.. pieces];
    }
}
