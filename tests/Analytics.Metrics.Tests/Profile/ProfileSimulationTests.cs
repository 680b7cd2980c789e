using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Change;
using Xunit.Abstractions;
using static Analytics.Metrics.Tests.Profile.Invented;

namespace Analytics.Metrics.Tests.Profile;

/// <summary>
/// Invented squads with a known truth: what the intervals cover and how often the verdicts and needs are wrong. Seeds are fixed. Athletes of one squad share
/// one estimate of the error, so a squad is the unit: limits are 4 standard errors of the mean over squads.
/// </summary>
public class ProfileSimulationTests(ITestOutputHelper output)
{
    private const int Squads = 300;
    private const int Athletes = 40;

    /// <param name="Retested">Athletes on the retest days.</param>
    /// <param name="Attempts">Attempts a day; the best counts.</param>
    /// <param name="Proportional">Error and attempts scatter with the athlete's level.</param>
    /// <param name="Missing">Share of the athletes missing a day.</param>
    public sealed record World(int Retested, int Attempts, bool Proportional, double Missing);

    public static TheoryData<World> Worlds =>
    [
        new World(12, 1, false, 0),
        new World(30, 3, false, 0.2),
        new World(30, 2, true, 0.1),
    ];

    [Theory]
    [MemberData(nameof(Worlds))]
    public void Change_KnownTruth_CoversAndFlagsAsStated(World world)
    {
        var coverage = new List<double>();
        var falseFlags = new List<double>();
        for (var s = 0; s < Squads; s++)
        {
            var random = new Random(7000 + 31 * s + world.Retested);
            // Half the squad truly gains 4 errors, half does not change.
            var levels = Enumerable.Range(0, Athletes).Select(_ => 100 + 20 * Normal(random)).ToArray();
            var gains = Enumerable.Range(0, Athletes).Select(i => i % 2 == 0 ? 0 : 12.0).ToArray();
            var metric = Metric(published: world.Proportional ? new PublishedError(5, null, "key") : null);
            var profile = new SquadProfile
            {
                Squad = Squad(Athletes, "Line", "Backs"),
                Retests = [RepeatDays.Pair(Test(random, world, levels[..world.Retested], March), Test(random, world, levels[..world.Retested], March))],
            };
            var before = Test(random, world, levels, March);
            var after = Test(random, world, [.. levels.Zip(gains, (l, g) => l + g)], April);
            var change = profile.Change(metric, before, after);

            Assert.Equal(ErrorSource.SeasonRetest, change.Reliability.Source);
            coverage.Add(change.Athletes.Average(a => a.Interval!.Value.Contains(gains[Index(a.AthleteId)]) ? 1.0 : 0));
            falseFlags.Add(change.Athletes.Where(a => gains[Index(a.AthleteId)] == 0).Average(a => a.Verdict.IsClear() ? 1.0 : 0));
        }

        var (covered, coveredError) = MeanAndError(coverage);
        Assert.True(covered is >= 0.93 and <= 0.97, FormattableString.Invariant($"{world}: covered {covered:F4} ± {coveredError:F4}"));
        var (wrong, wrongError) = MeanAndError(falseFlags);
        output.WriteLine(FormattableString.Invariant($"{world}: covered {covered:F4} ± {coveredError:F4}, false flags {wrong:F4} ± {wrongError:F4}"));
        Assert.True(wrong <= 0.05 + 4 * wrongError, FormattableString.Invariant($"{world}: false flags {wrong:F4} ± {wrongError:F4}"));
    }

    // Three qualities, true levels normal within groups: of the needs named, no more may be wrong than their probabilities say.
    [Theory]
    [InlineData(40, 4)]
    [InlineData(18, 6)]
    public void Needs_KnownTruth_AreWrongNoMoreThanStated(int athletes, int groups)
    {
        var excess = new List<double>();
        double named = 0, wrong = 0, stated = 0;
        Metric[] metrics = [.. new[] { Quality.MaximalStrength, Quality.ExplosivePower, Quality.Acceleration }.Select(q => Metric($"{q}", quality: q))];
        for (var s = 0; s < Squads; s++)
        {
            var random = new Random(90_000 + s);
            string[] names = [.. Enumerable.Range(0, groups).Select(g => $"G{g}")];
            var middles = metrics.Select(_ => names.Select(_ => 100 + 10 * Normal(random)).ToArray()).ToArray();
            var truth = metrics.Select((_, m) => Enumerable.Range(0, athletes).Select(i => middles[m][i % groups] + 8 * Normal(random)).ToArray()).ToArray();
            List<AthleteDay> Measure() => [.. Enumerable.Range(0, athletes).Select(i => Day($"a{i + 1}", March,
                [.. metrics.Select((metric, m) => (Trial)Number(truth[m][i] + 4 * Normal(random), metric: metric.Id))]))];

            var profile = new SquadProfile { Squad = Squad(athletes, names), Retests = [RepeatDays.Pair(Measure(), Measure())] };
            var day = Measure();
            var needs = profile.Needs([.. metrics.Select(m => profile.Standing(m, day))], [], new Dictionary<string, string>());
            var errors = needs.Athletes.Where(a => a.First is not null).Count(a =>
            {
                var i = Index(a.AthleteId);
                var m = Array.FindIndex(metrics, x => x.Quality == a.First!.Quality);
                return truth[m][i] > middles[m][i % groups] - 0.2 * 8;
            });
            named += needs.Named;
            wrong += errors;
            stated += needs.ExpectedWrong;
            excess.Add(errors - needs.ExpectedWrong);
        }

        var (mean, error) = MeanAndError(excess);
        output.WriteLine(FormattableString.Invariant($"{athletes} athletes, {groups} groups: named {named}, wrong {wrong}, stated {stated:F1}, excess per squad {mean:F3} ± {error:F3}"));
        Assert.True(named > Squads, "needs must be named for the rate to mean anything");
        Assert.True(mean <= 4 * error, FormattableString.Invariant($"named {named}, wrong {wrong}, stated {stated:F1}, excess per squad {mean:F3} ± {error:F3}"));
        Assert.True(wrong / named < 0.20, FormattableString.Invariant($"{wrong} of {named} wrong"));
    }

    private static List<AthleteDay> Test(Random random, World world, double[] levels, DateOnly date)
    {
        var days = new List<AthleteDay>();
        for (var i = 0; i < levels.Length; i++)
        {
            if (random.NextDouble() < world.Missing) continue;
            // Day-to-day error 3 (3 % when proportional), attempts within a day 1.
            var unit = world.Proportional ? levels[i] / 100 : 1;
            var form = levels[i] + 3 * unit * Normal(random);
            days.Add(Day($"a{i + 1}", date, [.. Enumerable.Range(0, world.Attempts).Select(_ => (Trial)Number(form + (world.Attempts > 1 ? unit * Normal(random) : 0)))]));
        }

        return days;
    }

    private static int Index(string id) => int.Parse(id[1..], System.Globalization.CultureInfo.InvariantCulture) - 1;

    private static (double Mean, double Error) MeanAndError(List<double> values)
    {
        var mean = values.Average();
        return (mean, Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Count - 1) / values.Count));
    }

    private static double Normal(Random random)
        => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
