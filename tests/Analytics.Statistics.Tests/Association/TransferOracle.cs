namespace Analytics.Statistics.Tests.Association;

/// <summary>Sixteen invented athletes on five days with gaps, and what R makes of them.</summary>
internal static class TransferOracle
{
    private static readonly Dictionary<(string, string), double> s_expected = Oracle.Rows("transfer-expected.csv").ToDictionary(r => (r[0], r[1]), r => Oracle.Number(r[2]));

    private static readonly string[][] s_rows = [.. Oracle.Rows("transfer-sixteen.csv")];

    public static double Value(string @case, string quantity) => s_expected[(@case, quantity)];

    public static string[] Athletes { get; } = [.. s_rows.Select(r => r[0])];

    public static double[] Times { get; } = [.. s_rows.Select(r => Oracle.Number(r[1]))];

    public static double?[] X { get; } = Nullable(2);

    public static double?[] Y { get; } = Nullable(3);

    public static double[] PrecisionX { get; } = [.. s_rows.Select(r => Oracle.Number(r[4]))];

    public static double[] PrecisionY { get; } = [.. s_rows.Select(r => Oracle.Number(r[5]))];

    /// <summary>Rows with both values.</summary>
    public static int[] Both { get; } = [.. Enumerable.Range(0, s_rows.Length).Where(i => X[i].HasValue && Y[i].HasValue)];

    private static double?[] Nullable(int column) => [.. s_rows.Select(r => r[column].Length == 0 ? (double?)null : Oracle.Number(r[column]))];
}
