using Analytics.Metrics.Motion;
using Analytics.Season.Cells;

namespace Analytics.Season.Clips;

/// <summary>The words for landmarks in season.json and clip files.</summary>
internal static class MarkerWords
{
    public static readonly WordSet<MarkerRole> Roles = new("landmark",
        [.. Enum.GetValues<MarkerRole>().Select(r => (Word(r), r)), ("head", MarkerRole.HeadVertex), ("c7", MarkerRole.Neck)]);

    /// <summary>Every word, for hints.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Enum.GetValues<MarkerRole>().Select(Word), "head", "c7"];

    /// <summary>"FarHip" as "far_hip".</summary>
    public static string Word(MarkerRole role)
        => string.Concat(role.ToString().Select((c, i) => char.IsUpper(c) && i > 0 ? $"_{char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
}
