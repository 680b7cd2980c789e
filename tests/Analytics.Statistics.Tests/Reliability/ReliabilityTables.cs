using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

/// <summary>The published and made-up tables by the names expected.csv gives them.</summary>
internal static class ReliabilityTables
{
    public static TheoryData<string> Names => ["shrout_fleiss", "weir_A", "weir_B", "retest3", "retest3_first2"];

    public static TrialTable Of(string name) => name switch
    {
        "shrout_fleiss" => Columns("shrout-fleiss-1979.csv", 1, 2, 3, 4),
        "weir_A" => Columns("weir-2005.csv", 1, 2),
        "weir_B" => Columns("weir-2005.csv", 3, 4),
        "retest3" => Columns("retest-three-trials.csv", 1, 2, 3),
        "retest3_first2" => Columns("retest-three-trials.csv", 1, 2),
        "pefr_wright" => Columns("bland-altman-1986.csv", 1, 2),
        "pefr_mini" => Columns("bland-altman-1986.csv", 3, 4),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, null),
    };

    private static TrialTable Columns(string file, params int[] columns)
        => TrialTable.FromRows([.. Oracle.Rows(file).Select(r => (IReadOnlyList<double?>)[.. columns.Select(c => (double?)Oracle.Number(r[c]))])]);
}
