using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion;

/// <summary>The published walk [winter2009, table A.1] as a clip, and its columns.</summary>
internal static class Walking
{
    private static readonly Dictionary<string, MarkerRole> Roles = new()
    {
        ["ribcage"] = MarkerRole.RibCage, ["hip"] = MarkerRole.Hip, ["knee"] = MarkerRole.Knee, ["ankle"] = MarkerRole.Ankle,
        ["heel"] = MarkerRole.Heel, ["mt5"] = MarkerRole.Metatarsal, ["toe"] = MarkerRole.Toe,
    };

    public static Frequency Rate { get; } = Frequency.FromHertz(69.9);

    public static double[] Raw(string column) => Column("walking_raw.csv", column);

    public static double[] Filtered(string column) => Column("walking_filtered_6hz.csv", column);

    public static IReadOnlyList<string> Columns { get; } = [.. OracleTable.Read("motion/walking_raw.csv")[0].Heads.Where(h => h.EndsWith("_cm", StringComparison.Ordinal))];

    public static DigitisedClip Clip { get; } = new(FrameClock.FromRate(Rate), Roles.Select(r => new MarkerTrack(r.Key, r.Value, Metres($"{r.Key}_x_cm"), Metres($"{r.Key}_y_cm"))), 1);

    private static double[] Metres(string column) => [.. Raw(column).Select(cm => cm / 100)];

    private static double[] Column(string table, string column) => [.. OracleTable.Read($"motion/{table}").Select(row => row[column])];
}
