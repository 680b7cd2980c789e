using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>Where a centre of mass is at one moment.</summary>
/// <param name="Point">Its place.</param>
/// <param name="StandardError">SD of x and of y by digitising error; null when the error of a point is not known.</param>
public sealed record CentreOfMassPoint(PlanePoint Point, Length? StandardError);

/// <summary>
/// The centre of mass of a set of segments: Σ mᵢ·(Pᵢ + cᵢ·(Qᵢ − Pᵢ))/Σ mᵢ, with P the first and Q the other end point. It is a weighted mean of landmarks, so its SD for independent points of SD s is s·√Σw².
/// Not in that error: the table's fit to this body, landmarks that are not the joint centres, and segments that are missing. <see cref="MassShare"/> and <see cref="Missing"/> say how much of the body is seen.
/// Sources: [winter2009], [deleva1996].
/// </summary>
public sealed class CentreOfMass
{
    private CentreOfMass(string table, IReadOnlyList<SegmentMass> segments, double whole, IReadOnlyList<string> missing, IReadOnlySet<MarkerRole> available)
    {
        (Table, Segments, Missing) = (table, segments, missing);
        var mass = segments.Sum(s => s.Row.MassFraction);
        MassShare = mass / whole;
        StandIns = [.. segments.Select(s => s.StandIn(available)).OfType<string>()];
        var moments = new Dictionary<MarkerRole, double>();
        foreach (var segment in segments) segment.AddWeights(available, moments);
        Weights = moments.Where(m => m.Value != 0).ToDictionary(m => m.Key, m => m.Value / mass);
    }

    /// <summary>Name of the segment table.</summary>
    public string Table { get; }

    /// <summary>The segments counted.</summary>
    public IReadOnlyList<SegmentMass> Segments { get; }

    /// <summary>Share of body mass in them, 0 to 1.</summary>
    public double MassShare { get; }

    /// <summary>Segments of the body that could not be had; empty for a set chosen by hand.</summary>
    public IReadOnlyList<string> Missing { get; }

    /// <summary>Where one side stands in for the middle of both.</summary>
    public IReadOnlyList<string> StandIns { get; }

    /// <summary>Weight of each landmark in the centre of mass; they sum to 1.</summary>
    public IReadOnlyDictionary<MarkerRole, double> Weights { get; }

    /// <summary>As much of the whole body as the landmarks allow; joined segments (lower leg with foot, head with arms and trunk) are taken where they cover more.</summary>
    /// <param name="table">Segment table.</param>
    /// <param name="available">Landmarks digitised.</param>
    /// <exception cref="ArgumentException">Not one segment can be had.</exception>
    public static CentreOfMass OfBody(SegmentTable table, IEnumerable<MarkerRole> available)
    {
        ArgumentNullException.ThrowIfNull(table);
        var roles = available.ToHashSet();
        var cover = table.Cover(roles);
        if (cover.Segments.Count == 0)
            throw new ArgumentException($"No segment of {table.Name} has both its ends digitised; there are: {string.Join(", ", roles.Select(r => r.InWords()))}.", nameof(available));
        return new(table.Name, cover.Segments, table.WholeBody, cover.Missing, roles);
    }

    /// <summary>As much of the whole body as a clip shows; <see cref="OfBody(SegmentTable, IEnumerable{MarkerRole})"/>.</summary>
    /// <exception cref="ArgumentException">Not one segment can be had.</exception>
    public static CentreOfMass OfBody(SegmentTable table, DigitisedClip clip)
    {
        ArgumentNullException.ThrowIfNull(clip);
        return OfBody(table, clip.Tracks.Select(t => t.Role));
    }

    /// <summary>A set of segments chosen by hand, for example one leg.</summary>
    /// <param name="table">The table they come from.</param>
    /// <param name="segments">At least one, each between landmarks.</param>
    /// <exception cref="ArgumentException">None.</exception>
    public static CentreOfMass OfSegments(SegmentTable table, params IReadOnlyList<SegmentMass> segments)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(segments);
        if (segments.Count == 0) throw new ArgumentException("A centre of mass needs at least one segment.", nameof(segments));
        return new(table.Name, segments, table.WholeBody, [], segments.SelectMany(s => s.First.Concat(s.Second)).ToHashSet());
    }

    /// <summary>The centre of mass of a posture.</summary>
    /// <param name="points">The landmarks; all in <see cref="Weights"/> are needed.</param>
    /// <param name="pointSd">SD of one coordinate; null when not known.</param>
    /// <exception cref="ArgumentException">A landmark that is missing or not finite.</exception>
    public CentreOfMassPoint Of(IReadOnlyDictionary<MarkerRole, PlanePoint> points, Length? pointSd = null)
    {
        ArgumentNullException.ThrowIfNull(points);
        double x = 0, y = 0, squares = 0;
        foreach (var (role, weight) in Weights)
        {
            if (!points.TryGetValue(role, out var point)) throw new ArgumentException($"The posture has no {role.InWords()}, which this centre of mass needs.", nameof(points));
            point = PlanePoint.Finite(point, $"the {role.InWords()}");
            (x, y, squares) = (x + (weight * point.XMetres), y + (weight * point.YMetres), squares + (weight * weight));
        }
        return new(new(x, y), pointSd is { } sd ? Require.NotNegative(sd, "SD of a point") * Math.Sqrt(squares) : null);
    }

    /// <summary>What is counted and what is missing, in a sentence.</summary>
    public override string ToString()
    {
        var share = FormattableString.Invariant($"{Table}: {100 * MassShare:0.#} % of body mass");
        return Missing.Count == 0 ? share : $"{share}; missing: {string.Join(", ", Missing)}";
    }
}
