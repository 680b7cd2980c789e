using Analytics.Metrics.Trials;

namespace Analytics.Season.Checks;

/// <summary>The usual time of one athlete at any distance, from his runs on some days; straight lines between gates on log scales.</summary>
internal sealed class RunCurve
{
    private readonly double[] distances;
    private readonly double[] times;

    private RunCurve(double[] distances, double[] times) => (this.distances, this.times) = (distances, times);

    /// <summary>The curve; null with fewer than two gates.</summary>
    public static RunCurve? Of(IEnumerable<SprintTrial> runs)
    {
        var gates = runs.SelectMany(r => r.Splits).GroupBy(s => Math.Round(s.Distance.Metres, 2))
            .Select(g => (Distance: Math.Log(g.Key), Time: Math.Log(Middle.Of(g.Select(s => s.Time.Seconds)))))
            .OrderBy(g => g.Distance).ToArray();
        return gates.Length < 2 ? null : new RunCurve([.. gates.Select(g => g.Distance)], [.. gates.Select(g => g.Time)]);
    }

    /// <summary>Time at a distance, s; beyond the gates the nearest section is carried on.</summary>
    /// <param name="metres">Distance, m.</param>
    public double TimeAt(double metres)
    {
        var x = Math.Log(metres);
        var i = 1;
        while (i < distances.Length - 1 && distances[i] < x) i++;
        var slope = (times[i] - times[i - 1]) / (distances[i] - distances[i - 1]);
        return Math.Exp(times[i - 1] + slope * (x - distances[i - 1]));
    }
}
