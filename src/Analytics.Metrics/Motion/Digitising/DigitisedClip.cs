using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// The digitised points of one clip in the plane of the run: x forward in the direction of travel, y up, in m. One track a landmark, all of the same
/// length; sample i is frame <see cref="FirstFrame"/> + i.
/// </summary>
public sealed class DigitisedClip
{
    private readonly Dictionary<MarkerRole, MarkerTrack> byRole;

    /// <summary>Makes a clip.</summary>
    /// <param name="clock">Times of the frames.</param>
    /// <param name="tracks">At least one, of one length, each landmark once.</param>
    /// <param name="firstFrame">Frame number of the first sample.</param>
    /// <param name="pointSd">SD of one digitised coordinate; null when not known.</param>
    /// <param name="scaleRelativeSd">Relative SD of the scale, 0 or more; null when not known.</param>
    /// <exception cref="ArgumentException">No tracks, unequal lengths, a landmark twice, or frames the clock does not cover.</exception>
    public DigitisedClip(FrameClock clock, IEnumerable<MarkerTrack> tracks, int firstFrame = 0, Length? pointSd = null, double? scaleRelativeSd = null)
    {
        ArgumentNullException.ThrowIfNull(clock);
        ArgumentNullException.ThrowIfNull(tracks);
        (Clock, FirstFrame, Tracks) = (clock, firstFrame, [.. tracks]);
        PointSd = pointSd is { } sd ? Require.NotNegative(sd, "SD of a digitised point") : null;
        ScaleRelativeSd = scaleRelativeSd is null or (>= 0 and < 1) ? scaleRelativeSd
            : throw new ArgumentOutOfRangeException(nameof(scaleRelativeSd), scaleRelativeSd, FormattableString.Invariant($"the relative SD of the scale must be 0 or more and below 1; got {scaleRelativeSd}."));
        if (Tracks.Count == 0) throw new ArgumentException("A clip needs at least one marker.", nameof(tracks));
        byRole = [];
        foreach (var track in Tracks) Add(track);
        if (!clock.Covers(firstFrame) || !clock.Covers(LastFrame))
            throw new ArgumentException($"The clip has frames {firstFrame} to {LastFrame}; the clock has {clock.FrameCount} time stamps from frame {clock.FirstFrame}.", nameof(clock));
    }

    /// <summary>Times of the frames.</summary>
    public FrameClock Clock { get; }

    /// <summary>Frame number of the first sample.</summary>
    public int FirstFrame { get; }

    /// <summary>Frame number of the last sample.</summary>
    public int LastFrame => FirstFrame + Count - 1;

    /// <summary>Samples of each track.</summary>
    public int Count => Tracks[0].Count;

    /// <summary>All tracks, in the order given.</summary>
    public IReadOnlyList<MarkerTrack> Tracks { get; }

    /// <summary>SD of one digitised coordinate, the same for all points; null when not known.</summary>
    public Length? PointSd { get; }

    /// <summary>Relative SD of the scale: every length, speed and acceleration of the clip is off by the same factor; angles are not. Null when not known.</summary>
    public double? ScaleRelativeSd { get; }

    /// <summary>Where the rows of the picture lie, so that the moment at which a point was exposed can be had; null when not known.</summary>
    public PictureRows? Rows { get; init; }

    /// <summary>The track of a landmark.</summary>
    /// <exception cref="KeyNotFoundException">Not digitised; those that are get listed.</exception>
    public MarkerTrack this[MarkerRole role] => Find(role)
        ?? throw new KeyNotFoundException($"The clip has no marker for the {role.InWords()}; it has: {string.Join(", ", Tracks.Select(t => t.Role.InWords()))}.");

    /// <summary>The track of a landmark; null when it was not digitised.</summary>
    public MarkerTrack? Find(MarkerRole role) => byRole.GetValueOrDefault(role);

    /// <summary>SD of one coordinate of a landmark after its filter, for digitising errors independent from frame to frame (<see cref="NoiseGain"/>); null when the SD of a point is not known.</summary>
    /// <exception cref="KeyNotFoundException">Not digitised.</exception>
    public Length? PointSdOf(MarkerRole role)
        => PointSd is { } sd ? Length.FromMetres(sd.Metres * NoiseGain.OfPosition(this[role].Smoothing, Clock.Rate)) : null;

    /// <summary>Sample index of a frame.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A frame outside the clip.</exception>
    public int IndexOf(int frame) => frame >= FirstFrame && frame <= LastFrame
        ? frame - FirstFrame
        : throw new ArgumentOutOfRangeException(nameof(frame), frame, $"the clip has frames {FirstFrame} to {LastFrame}; got frame {frame}.");

    /// <summary>The same clip with other tracks, for example filtered ones.</summary>
    public DigitisedClip With(IEnumerable<MarkerTrack> tracks) => new(Clock, tracks, FirstFrame, PointSd, ScaleRelativeSd) { Rows = Rows };

    private void Add(MarkerTrack track)
    {
        ArgumentNullException.ThrowIfNull(track);
        if (track.Count != Count)
            throw new ArgumentException($"Marker '{track.Name}' has {track.Count} samples, marker '{Tracks[0].Name}' {Count}; all must have one a frame.", nameof(track));
        if (!byRole.TryAdd(track.Role, track))
            throw new ArgumentException($"Markers '{byRole[track.Role].Name}' and '{track.Name}' both stand for the {track.Role.InWords()}; a landmark may come once.", nameof(track));
    }
}
