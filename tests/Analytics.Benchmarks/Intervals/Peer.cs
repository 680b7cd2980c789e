namespace Analytics.Benchmarks.Intervals;

/// <summary>What another tool measured of itself, one line of JSON.</summary>
internal sealed record Peer(string Version, double Seconds, double Low, double High)
{
    /// <summary>Runs a script of tests/oracles on one thread; null, with words on the error stream, when the tool is missing or fails.</summary>
    public static Peer? Run(string program, string script, IEnumerable<string> arguments) => PeerProcess.Run<Peer>(program, script, arguments);
}
