using System.Globalization;

namespace Analytics.Statistics.Tests;

/// <summary>Reads tests/oracles/statistics.</summary>
internal static class Oracle
{
    private static readonly Dictionary<(string, string), double> s_expected = Rows("expected.csv")
        .ToDictionary(r => (r[0], r[1]), r => Number(r[2]));

    /// <summary>A value of expected.csv.</summary>
    public static double Value(string @case, string quantity) => s_expected[(@case, quantity)];

    /// <summary>Cases of expected.csv whose name begins so.</summary>
    public static TheoryData<string> Cases(string prefix)
        => [.. s_expected.Keys.Select(k => k.Item1).Where(c => c.StartsWith(prefix, StringComparison.Ordinal)).Distinct()];

    /// <summary>Rows of a file without its head.</summary>
    public static IEnumerable<string[]> Rows(string file)
        => File.ReadLines(Path.Combine(AppContext.BaseDirectory, "oracles", "statistics", file)).Skip(1).Select(l => l.Split(','));

    /// <summary>One column of numbers.</summary>
    public static double[] Column(string file, int column) => [.. Rows(file).Select(r => Number(r[column]))];

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>Relative agreement, absolute where the expected value is 0.</summary>
    public static void Close(double expected, double actual, double relative = 1e-10)
    {
        var allowed = relative * (expected == 0 ? 1 : Math.Abs(expected));
        Assert.True(Math.Abs(actual - expected) <= allowed,
            string.Create(CultureInfo.InvariantCulture, $"expected {expected:R}, got {actual:R}, allowed difference {allowed:E1}"));
    }
}
