using System.Globalization;
using Analytics.Statistics.Reliability;

namespace Analytics.Benchmarks.IccTables;

/// <summary>ICC(3,1) with its interval for 10,000 small tables on one core, beside R: the usual package, and a lean function of base R that fits no model.</summary>
internal sealed class IccTablesBenchmark : IBenchmark
{
    private const int Tables = 10_000, Athletes = 10, Trials = 3, Rounds = 5;

    public string Name => "icc-tables";

    public string What => "intraclass correlations of 10,000 tables of 10 × 3 beside R (needs Rscript, psych for the usual way; --rscript PATH)";

    public int Run(string[] args)
    {
        var tables = Made();
        if (RPeer.Run(args is ["--rscript", var path] ? path : "Rscript", tables, Athletes, Trials) is not { } peer) return 2;

        var found = new IntraclassCorrelation[Tables];
        var ours = Enumerable.Range(0, Rounds).Select(_ => Seconds(tables, found)).Order().ElementAt(Rounds / 2);
        Say($"{Tables} tables of {Athletes} × {Trials}, ICC(3,1) with 95 % interval, processor time, one thread");
        Say($"  first table: {found[0].Value:0.000000000} ({found[0].Interval.Low:0.000000000} to {found[0].Interval.High:0.000000000}), R {peer.First[0]:0.000000000} ({peer.First[1]:0.000000000} to {peer.First[2]:0.000000000})");
        Say($"  this library, tables made from arrays  {ours,9:0.0000} s   {Tables / ours,12:#,0} tables/s");
        Say($"  base R {peer.Version}, lean function         {peer.Plain,9:0.0000} s   {Tables / peer.Plain,12:#,0} tables/s   ratio {peer.Plain / ours:0.0}");
        if (peer.PsychPerTable is { } each)
            Say($"  psych {peer.Psych}, ICC(lmer = FALSE)       {each * Tables,9:0.0000} s   {1 / each,12:#,0} tables/s   ratio {each * Tables / ours:0}   (rate of {peer.PsychTables} tables)");
        else
            Say($"  psych is not installed in this R: no comparison with the usual way");
        return 0;
    }

    private static double Seconds(double?[][][] tables, IntraclassCorrelation[] found)
    {
        var start = Environment.CpuUsage.TotalTime.TotalSeconds;
        for (var i = 0; i < tables.Length; i++) found[i] = IntraclassCorrelation.Of(TrialTable.FromRows(tables[i]));
        return Environment.CpuUsage.TotalTime.TotalSeconds - start;
    }

    private static double?[][][] Made()
    {
        var random = new Random(1979);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        return [.. Enumerable.Range(0, Tables).Select(_ => Enumerable.Range(0, Athletes).Select(_ =>
        {
            var level = 40 + 3 * Normal();
            return Enumerable.Range(0, Trials).Select(j => (double?)(level + 0.3 * j + Normal())).ToArray();
        }).ToArray())];
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
