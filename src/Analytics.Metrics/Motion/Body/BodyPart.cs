namespace Analytics.Metrics.Motion;

/// <summary>How a body is put together from segments: a segment, several parts, or the best of several ways to cover a part.</summary>
internal abstract record BodyPart
{
    /// <summary>The segments that can be had from the landmarks, and what is missing.</summary>
    public abstract Cover Of(IReadOnlySet<MarkerRole> available);

    public sealed record Cover(IReadOnlyList<SegmentMass> Segments, IReadOnlyList<string> Missing)
    {
        public double Mass => Segments.Sum(s => s.Row.MassFraction);
    }

    public sealed record Leaf(SegmentMass Segment) : BodyPart
    {
        public override Cover Of(IReadOnlySet<MarkerRole> available)
            => Segment.CanBeHad(available) ? new([Segment], []) : new([], [Segment.Name]);
    }

    public sealed record All(params BodyPart[] Parts) : BodyPart
    {
        public override Cover Of(IReadOnlySet<MarkerRole> available)
        {
            Cover[] covers = [.. Parts.Select(p => p.Of(available))];
            return new([.. covers.SelectMany(c => c.Segments)], [.. covers.SelectMany(c => c.Missing)]);
        }
    }

    /// <summary>The way that covers most mass; the finer one (listed first) when they are equal.</summary>
    public sealed record BestOf(params BodyPart[] Ways) : BodyPart
    {
        public override Cover Of(IReadOnlySet<MarkerRole> available)
        {
            var best = Ways[0].Of(available);
            foreach (var way in Ways.Skip(1))
                if (way.Of(available) is var cover && cover.Mass > best.Mass + 1e-9) best = cover;
            return best;
        }
    }
}
