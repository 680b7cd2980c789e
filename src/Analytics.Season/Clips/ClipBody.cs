using Analytics.Metrics.Motion;

namespace Analytics.Season.Clips;

/// <summary>The landmarks of a body in pixels, over one run of frames.</summary>
internal sealed class ClipBody
{
    private static readonly MarkerRole[] Highest = [MarkerRole.HeadVertex, MarkerRole.Neck, MarkerRole.Shoulder, MarkerRole.FarShoulder, MarkerRole.RibCage, MarkerRole.Hip, MarkerRole.FarHip];
    private static readonly MarkerRole[] Lowest = [MarkerRole.Ankle, MarkerRole.FarAnkle, MarkerRole.Heel, MarkerRole.FarHeel, MarkerRole.Metatarsal, MarkerRole.FarMetatarsal, MarkerRole.Toe, MarkerRole.FarToe, MarkerRole.Knee, MarkerRole.FarKnee, MarkerRole.Hip, MarkerRole.FarHip];
    private static readonly MarkerRole[] Carriers = [MarkerRole.Hip, MarkerRole.FarHip, MarkerRole.RibCage, MarkerRole.Shoulder, MarkerRole.FarShoulder, MarkerRole.Neck, MarkerRole.HeadVertex];

    private readonly Dictionary<MarkerRole, PixelMarker> markers;

    /// <summary>Makes it from the landmarks of a map.</summary>
    public ClipBody(MarkerMap map)
    {
        var body = map.Roles.Where(r => r.Key.IsBody() && r.Value.Points.Count > 0).OrderBy(r => r.Key).ToList();
        (First, Last) = (body.Min(r => r.Value.Points.Min(p => p.Frame)), body.Max(r => r.Value.Points.Max(p => p.Frame)));
        // A wrong frame number far off would ask for that many empty samples.
        markers = IsTooLong ? [] : body.ToDictionary(r => r.Key, r => new PixelMarker(r.Value, r.Key, First, Last));
    }

    /// <summary>Most frames a clip may span.</summary>
    public const int MostFrames = 200_000;

    /// <summary>First frame with a point.</summary>
    public int First { get; }

    /// <summary>Last frame with a point.</summary>
    public int Last { get; }

    /// <summary>Whether it spans more than <see cref="MostFrames"/>.</summary>
    public bool IsTooLong => Last - First >= MostFrames;

    /// <summary>The landmarks.</summary>
    public IReadOnlyCollection<PixelMarker> Markers => markers.Values;

    /// <summary>A landmark; null when it was not digitised.</summary>
    public PixelMarker? Find(MarkerRole role) => markers.GetValueOrDefault(role);

    /// <summary>The highest landmark of a standing body, and the lowest; null when there are no two.</summary>
    public (PixelMarker High, PixelMarker Low)? Ends
        => FirstOf(Highest) is { } high && FirstOf([.. Lowest.Where(r => r != high.Role && r.Near() != high.Role.Near())]) is { } low ? (high, low) : null;

    /// <summary>The landmark whose way is that of the body.</summary>
    public PixelMarker? Carrier => FirstOf(Carriers);

    /// <summary>Way of the carrier between two frames, cut to the frames there are.</summary>
    public (double X, double Y)? Way(int from, int to) => Carrier?.Way(Math.Clamp(from, First, Last), Math.Clamp(to, First, Last));

    private PixelMarker? FirstOf(IEnumerable<MarkerRole> roles) => roles.Select(Find).FirstOrDefault(m => m is not null);
}
