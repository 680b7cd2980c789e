using Analytics.Metrics.Seasons;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.SeasonStudy.Courses;

/// <summary>How the intervals of mean changes of one metric fare in one scenario.</summary>
public sealed class CourseRates(string metricId)
{
    private readonly List<(int Season, string Key, Analytics.Statistics.Interval Interval, bool IsSquad)> _others = [];
    private readonly Dictionary<string, (double Sum, int Players)> _population = [];
    private double _width, _othersWidth;

    public string MetricId { get; } = metricId;

    /// <summary>Squad, from the first period to the last, against the mean true change of the athletes in it.</summary>
    public Tally Squad { get; } = new();

    /// <summary>Groups, the same.</summary>
    public Tally Groups { get; } = new();

    /// <summary>Squad and groups, from the first period to those between.</summary>
    public Tally Between { get; } = new();

    /// <summary>Clear verdict on the squad or a group in the wrong direction.</summary>
    public Tally WrongWay { get; } = new();

    /// <summary>Seasons whose model had slopes of the athletes' own.</summary>
    public Tally OwnSlopes { get; } = new();

    /// <summary>Half width of the squad's interval over that of the population's, mean.</summary>
    public double WidthRatio => _width / _othersWidth;

    public void Add(SeasonChain chain, SeasonMeasures.Measure measure)
    {
        var trend = measure.Trend;
        OwnSlopes.Add(chain.Number, trend.HasOwnSlopes);
        foreach (var course in trend.Groups.Prepend(trend.Squad))
        {
            var athletes = trend.Athletes.Where(a => course.Group is null || a.Group == course.Group).Select(a => a.AthleteId).ToList();
            foreach (var point in course.Points.Skip(1))
            {
                var (from, to) = (course.Points[0].Period.From, point.Period.From);
                var truth = athletes.Average(a => measure.TrueChange(a, from, to));
                var since = point.SinceFirst!;
                var covered = since.Interval.Contains(truth);
                if (point != course.Points[^1])
                {
                    Between.Add(chain.Number, covered);
                    continue;
                }

                (course.Group is null ? Squad : Groups).Add(chain.Number, covered);
                WrongWay.Add(chain.Number, Analytics.Statistics.Change.VerdictWords.IsClear(course.Verdict) && since.Change.Difference > 0 != truth > 0);
                Keep(chain, measure, course, from, to, since);
            }
        }
    }

    /// <summary>The intervals for others like them, against the mean true change of all players ever drawn for the group.</summary>
    public Tally Others(bool squad)
    {
        var tally = new Tally();
        foreach (var (season, key, interval, isSquad) in _others.Where(o => o.IsSquad == squad))
            tally.Add(season, interval.Contains(_population[key].Sum / _population[key].Players));
        return tally;
    }

    private void Keep(SeasonChain chain, SeasonMeasures.Measure measure, TrendCourse course, DateOnly from, DateOnly to, TrendDifference since)
    {
        var key = $"{course.Group} {from:O} {to:O}";
        _others.Add((chain.Number, key, since.OthersLikeThem, course.Group is null));
        var roster = chain.Players.Values.Where(p => course.Group is null || p.Group == course.Group).ToList();
        var (sum, players) = _population.GetValueOrDefault(key);
        _population[key] = (sum + roster.Sum(p => measure.TrueChange(p.Id, from, to)), players + roster.Count);
        if (course.Group is not null) return;
        _width += since.Interval.High - since.Interval.Low;
        _othersWidth += since.OthersLikeThem.High - since.OthersLikeThem.Low;
    }
}
