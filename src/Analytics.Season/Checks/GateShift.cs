namespace Analytics.Season.Checks;

/// <summary>
/// How far the runs of a day are off the other days of the same athletes, gate by gate, and whether gates at another unit explain it.
/// All limits are common practice, no source.
/// </summary>
internal sealed class GateShift
{
    // A squad does not change by more than this from one day to another within half a year; each year more adds a little.
    private const double LargestChange = 0.045, LargestChangePerYear = 0.02;

    // What another unit leaves unexplained: a fast or slow day of the squad.
    private const double LeftOver = 0.025;

    // Athletes who must show it; one in five may have changed as much the other way.
    private const double MostAthletes = 0.8;

    private readonly IReadOnlyList<DayRuns> athletes;

    public GateShift(IReadOnlyList<DayRuns> athletes) => this.athletes = athletes;

    /// <summary>Whether the whole squad is off by more than training does in the time between.</summary>
    public bool IsImplausible()
    {
        var years = Middle.Of(athletes.Select(a => (double)a.DaysApart)) / 365;
        return Math.Abs(Middle.Of(athletes.Select(a => Middle.Of(Gates(a, 1).Select(g => g.Change))))) >= LargestChange + (LargestChangePerYear * Math.Max(0, years - 0.5));
    }

    /// <summary>Whether gates that stood at this multiple of the head's distance explain it: in size, at nearly every athlete, and in shape over the gates.</summary>
    /// <param name="stretch">True distance in distances of the head.</param>
    public bool IsExplainedBy(double stretch)
    {
        var all = athletes.Select(a => Gates(a, stretch).ToList()).ToList();
        if (Math.Abs(Middle.Of(all.Select(a => Middle.Of(a.Select(g => g.Change - g.Explained))))) >= LeftOver) return false;
        var byGate = all.SelectMany(a => a).GroupBy(g => g.Metres).Select(g => new GateChange(g.Key, Middle.Of(g.Select(c => c.Change)), Middle.Of(g.Select(c => c.Explained)))).ToList();
        // A single gate has no shape; then everyone must agree.
        return all.Count(Agrees) >= (byGate.Count > 1 ? MostAthletes : 1) * all.Count && (byGate.Count < 2 || HasItsShape(byGate));
    }

    // Nearer to the other unit than to no change.
    private static bool Agrees(List<GateChange> gates) => Middle.Of(gates.Select(g => g.Change / g.Explained)) > 0.5;

    // The same yard for a metre costs more of the time the farther the gate: the runner is faster there. A squad that got faster gains about alike.
    private static bool HasItsShape(List<GateChange> gates) => Spread(gates.Select(g => g.Change - g.Explained)) < Spread(gates.Select(g => g.Change));

    private static double Spread(IEnumerable<double> values)
    {
        var list = values.ToList();
        var mean = list.Average();
        return list.Sum(v => (v - mean) * (v - mean));
    }

    private static IEnumerable<GateChange> Gates(DayRuns athlete, double stretch)
        => from split in athlete.Runs.SelectMany(r => r.Splits)
           let usual = athlete.Others.TimeAt(split.Distance.Metres)
           select new GateChange(Math.Round(split.Distance.Metres, 2), Math.Log(split.Time.Seconds / usual), Math.Log(athlete.Others.TimeAt(split.Distance.Metres * stretch) / usual));

    /// <summary>Change at a gate as a logarithm, and what the other unit would make it.</summary>
    private readonly record struct GateChange(double Metres, double Change, double Explained);
}
