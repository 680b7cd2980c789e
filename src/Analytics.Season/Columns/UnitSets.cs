using Analytics.Quantities;

namespace Analytics.Season.Columns;

/// <summary>The units each kind of column may be written in, the commonest first.</summary>
internal static class UnitSets
{
    public static readonly IReadOnlyList<Unit> Loads = Pick(Mass.Units, "lb", "kg");

    public static readonly IReadOnlyList<Unit> Heights = Pick(Length.Units, "in", "cm", "m");

    public static readonly IReadOnlyList<Unit> Distances = Pick(Length.Units, "in", "cm", "m", "ft");

    public static readonly IReadOnlyList<Unit> Throws = Pick(Length.Units, "m", "ft", "in", "cm");

    public static readonly IReadOnlyList<Unit> Rises = Pick(Length.Units, "cm", "m", "in");

    public static readonly IReadOnlyList<Unit> ShortTimes = Pick(Duration.Units, "ms", "s");

    public static readonly IReadOnlyList<Unit> Times = Pick(Duration.Units, "s", "ms");

    public static readonly IReadOnlyList<Unit> Rests = Pick(Duration.Units, "s", "min");

    public static readonly IReadOnlyList<Unit> Gaps = Pick(Length.Units, "m", "yd", "ft");

    public static readonly IReadOnlyList<Unit> Calibrations = Pick(Length.Units, "m", "cm", "in", "ft", "yd");

    private static IReadOnlyList<Unit> Pick(IReadOnlyList<Unit> known, params string[] symbols)
        => [.. symbols.Select(s => known.Single(u => u.Symbol == s))];
}
