namespace Analytics.Statistics.Tests.Reliability;

/// <summary>Values of reliability.csv, which reliability.R beside it makes.</summary>
internal static class PeerOracle
{
    private static readonly Dictionary<(string, string), double> s_values = Oracle.Rows("reliability.csv").ToDictionary(r => (r[0], r[1]), r => Oracle.Number(r[2]));

    public static double Value(string @case, string quantity) => s_values[(@case, quantity)];
}
