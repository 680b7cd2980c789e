namespace Analytics.Simulation.ErrorRates;

/// <summary>
/// Counts how often something held, season by season. Athletes of one season share its typical error and its luck, so
/// the Monte Carlo error treats the season as the unit (ratio estimate over clusters).
/// </summary>
public sealed class Tally
{
    private readonly Dictionary<int, (int Held, int Asked)> _seasons = [];

    public int Asked => _seasons.Values.Sum(s => s.Asked);

    public int Held => _seasons.Values.Sum(s => s.Held);

    public int Seasons => _seasons.Count;

    /// <summary>Share that held; NaN when nothing was asked.</summary>
    public double Rate => (double)Held / Asked;

    /// <summary>Standard error of <see cref="Rate"/>; NaN with fewer than two seasons.</summary>
    public double MonteCarloError
    {
        get
        {
            if (Seasons < 2) return double.NaN;
            var rate = Rate;
            var squares = _seasons.Values.Sum(s => Math.Pow(s.Held - rate * s.Asked, 2));
            return Math.Sqrt(squares * Seasons / (Seasons - 1)) / Asked;
        }
    }

    /// <summary>All counts together.</summary>
    public static Tally Sum(IEnumerable<Tally> tallies)
    {
        var sum = new Tally();
        foreach (var (season, (held, asked)) in tallies.SelectMany(t => t._seasons))
        {
            var was = sum._seasons.GetValueOrDefault(season);
            sum._seasons[season] = (was.Held + held, was.Asked + asked);
        }

        return sum;
    }

    public void Add(int season, bool held)
    {
        var (was, asked) = _seasons.GetValueOrDefault(season);
        _seasons[season] = (was + (held ? 1 : 0), asked + 1);
    }
}
