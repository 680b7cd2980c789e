namespace Analytics.Metrics.Motion;

/// <summary>A paired segment on one side of the body.</summary>
internal static class Side
{
    public static BodyPart.Leaf Of(SegmentRow row, MarkerRole first, MarkerRole second, bool far)
    {
        var name = row.Name.ToLowerInvariant();
        return new(far ? row.Between(first.Far(), second.Far(), $"far {name}") : row.Between(first, second, $"near {name}"));
    }
}
