using Analytics.Metrics.Bench;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Tests.Seasons;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics.Resampling;

namespace Analytics.Metrics.Tests.Bench;

/// <summary>Small squads for the bench, of trials that simply are numbers.</summary>
internal static class Benches
{
    public static readonly string[] Groups = ["Line", "Backs", "Mids", "Ends"];

    /// <summary>Days with one number of each name for each athlete a1, a2, ...; NaN leaves it out.</summary>
    /// <param name="athletes">Number of athletes.</param>
    /// <param name="dates">The days.</param>
    /// <param name="columns">Name, and value of athlete i (from 0) on day d (from 0).</param>
    public static IReadOnlyList<IReadOnlyList<AthleteDay>> Days(int athletes, IReadOnlyList<DateOnly> dates, params (string Name, Func<int, int, double> Value)[] columns)
        => [.. dates.Select((date, d) => (IReadOnlyList<AthleteDay>)[.. Enumerable.Range(0, athletes).Select(i => Invented.Day($"a{i + 1}", date,
            [.. columns.Where(c => !double.IsNaN(c.Value(i, d))).Select(c => (Trial)Invented.Number(c.Value(i, d), metric: c.Name))]))])];

    /// <summary>A bench of days, the first two being a retest when asked for.</summary>
    public static BenchSquad Bench(IReadOnlyList<IReadOnlyList<AthleteDay>> days, bool retest, IReadOnlyList<string>? groups = null, params string[] library)
    {
        var ids = days.SelectMany(d => d).Select(d => d.AthleteId).Distinct().ToList();
        var names = groups ?? Groups;
        return new(
            new SquadProfile { Squad = [.. ids.Select((id, i) => new SquadMember(id, names[i % names.Count]))], Retests = retest ? [RepeatDays.Pair(days[0], days[1])] : [] },
            days, library.Select(id => Invented.Metric(id, rule: TrialRule.Mean)));
    }

    /// <summary>The same squad and days beside other library metrics.</summary>
    public static BenchSquad Beside(this BenchSquad bench, params IEnumerable<Metric> library) => new(bench.Profile, bench.Days, library);

    /// <summary>A sketch of the numbers of a day; null where one is missing.</summary>
    public static MetricSketch Own(Func<double[], double> value, params string[] names)
        => Sketch.Day("own_idea", "Own idea", "1", Direction.Higher, (0, 1e6), day =>
        {
            double?[] all = [.. names.Select(n => day.Of<NumberTrial>().FirstOrDefault(t => t.Metric == n)?.Value)];
            return all.All(v => v.HasValue) ? value([.. all.Select(v => v!.Value)]) : default(AnyQuantity?);
        });

    /// <summary>Levels that differ by a tenth or so, and on each day an error of the same kind: amounts e^(4 + 0.1 z + error).</summary>
    public static Func<int, int, double> Drawn(ulong seed, double error = 0.03, Func<int, double>? level = null)
    {
        double Z(int i, int place) => new NormalDraws((seed << 32) + ((ulong)i << 8) + (ulong)place).Next();
        return (i, d) => Math.Exp(4 + (level?.Invoke(i) ?? 0.1 * Z(i, 0)) + error * Z(i, d + 1));
    }

    public static readonly DateOnly[] Retest = [Course.Baseline, Course.Retest];

    /// <summary>The values of one invented metric on one day.</summary>
    public static (OccasionValues Values, SeasonPeriod Occasion, SquadProfile Profile) One(params (string Group, double Value)[] rows)
    {
        var profile = new SquadProfile { Squad = [.. rows.Select((r, i) => new SquadMember($"a{i + 1}", r.Group))] };
        var values = SeasonValues.Of(Invented.Metric(), [Invented.Days(Invented.March, [.. rows.Select(r => r.Value)])]);
        var occasion = OccasionValues.Fullest(values, profile)!;
        return (OccasionValues.On(values, occasion), occasion, profile);
    }
}
