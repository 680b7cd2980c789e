using Analytics.Metrics.Transfer;
using Analytics.Simulation.ErrorRates;
using Analytics.Statistics.Association;

namespace Analytics.Simulation.SeasonStudy.Transfer;

/// <summary>What a transfer study said of one pair over many seasons.</summary>
public sealed class TransferCount
{
    private readonly List<(int Season, double True, double? Told, double? Low, double? High)> _told = [];
    private readonly List<(int Season, double True, double Low, double High)> _slopes = [];
    private readonly List<int> _needed = [];

    /// <summary>The interval of one pair leaves out 0.</summary>
    public Tally Found { get; } = new();

    /// <summary>The verdict after the adjustment for all pairs.</summary>
    public Tally FoundAdjusted { get; } = new();

    /// <summary>The same interval had the errors' covariance been left in.</summary>
    public Tally WithErrorsLeftIn { get; } = new();

    /// <summary>Correlation beyond the calendar, forms left in.</summary>
    public Tally BeyondCalendar { get; } = new();

    /// <summary>Classic repeated-measures correlation over the season.</summary>
    public Tally Classic { get; } = new();

    /// <summary>The data were said to speak against a strong link.</summary>
    public Tally Against { get; } = new();

    /// <summary>True gains were not seen to differ.</summary>
    public Tally NoSpread { get; } = new();

    public double MeanAthletes { get; private set; }

    public void Add(int season, TransferPair pair, double truth, double trueSlope)
    {
        if (pair.Gains is not { P: { } p } gains) return;
        var level = 0.05;
        MeanAthletes += (gains.Athletes - MeanAthletes) / (Found.Asked + 1);
        Found.Add(season, p <= level);
        FoundAdjusted.Add(season, pair.Verdict is TransferVerdict.WentTogether or TransferVerdict.WentOpposite);
        WithErrorsLeftIn.Add(season, Correlation.Pearson([.. gains.Gains.Select(g => g.X)], [.. gains.Gains.Select(g => g.Y)]).P <= level);
        BeyondCalendar.Add(season, pair.BeyondCalendar?.P <= level);
        Classic.Add(season, pair.Classic?.P <= level);
        Against.Add(season, pair.Verdict == TransferVerdict.AgainstStrongLink);
        NoSpread.Add(season, !gains.SpreadIsSeen);
        _told.Add((season, truth, gains.OfTrueGains, gains.IntervalOfTrueGains?.Low, gains.IntervalOfTrueGains?.High));
        if (pair.Slope is { Interval: { } slope }) _slopes.Add((season, trueSlope, slope.Low, slope.High));
        if (gains.AthletesNeeded(0.6) is { } needed) _needed.Add(needed);
    }

    /// <summary>Mean true correlation of the gains, in the metrics' units.</summary>
    public double True => _told.Average(t => t.True);

    /// <summary>Mean figure told.</summary>
    public double Told => _told.Where(t => t.Told.HasValue).Select(t => t.Told!.Value).DefaultIfEmpty(double.NaN).Average();

    /// <summary>Monte Carlo error of <see cref="Told"/>.</summary>
    public double ToldError
    {
        get
        {
            var told = _told.Where(t => t.Told.HasValue).Select(t => t.Told!.Value).ToList();
            return told.Count < 2 ? double.NaN : Analytics.Statistics.Summaries.Moments.StandardDeviation(told) / Math.Sqrt(told.Count);
        }
    }

    /// <summary>Intervals that hold the true correlation; those without an interval are not asked.</summary>
    public Tally Covered
    {
        get
        {
            var (covered, population) = (new Tally(), True);
            foreach (var t in _told.Where(t => t.Low.HasValue)) covered.Add(t.Season, t.Low <= population && population <= t.High);
            return covered;
        }
    }

    /// <summary>Intervals of the slope that hold the true one.</summary>
    public Tally SlopeCovered
    {
        get
        {
            var covered = new Tally();
            if (_slopes.Count == 0) return covered;
            var population = _slopes.Average(s => s.True);
            foreach (var s in _slopes) covered.Add(s.Season, s.Low <= population && population <= s.High);
            return covered;
        }
    }

    /// <summary>Median over the seasons of the players it takes to find 0.6 in nine of ten seasons.</summary>
    public int? Needed => _needed.Count == 0 ? null : _needed.Order().ElementAt(_needed.Count / 2);
}
