using Analytics.Metrics.Bench;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Tests.Seasons;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Bench;

/// <summary>Whatever the season holds, a sketch has a card with a verdict and three weak points, and nothing is thrown.</summary>
public class BenchSquadTests
{
    private static readonly Func<int, int, double> s_level = (i, d) => 100 + i + 0.3 * ((i * 7 + d * 5) % 11 - 5);

    public static TheoryData<string> Seasons => ["empty", "no athletes", "no trials", "one day", "no retest", "retest only", "equal", "equal but for rounding", "eight in eight groups", "seven", "nobody in the squad list", "zeros", "negative", "two groups of four", "one athlete", "exact repeats", "full days"];

    [Theory, MemberData(nameof(Seasons))]
    public void Judge_AnySeason_HasAVerdictAndThreeWeakPoints(string season)
    {
        var bench = Bench(season);
        MetricSketch[] sketches =
        [
            Benches.Own(v => v[0], "m"), Benches.Own(v => v[0] * v[1], "m", "a"), Sketch.Each<NumberTrial>("each", "Each", "1", Direction.Lower, (0, 1), (t, _) => t.Value),
            Benches.Own(v => v[0], "none"), Sketch.Day("fails", "Fails", "kg", Direction.Higher, (0, 1), _ => throw new NotSupportedException()), Sketch.Day("mass", "Mass", "kg", Direction.Neither, (0, 1), d => d.BodyMass),
        ];

        Assert.All(sketches, sketch =>
        {
            var card = bench.Judge(sketch);
            Assert.Equal(3, card.Weakest.Count);
            Assert.EndsWith(".", card.Verdict.Why, StringComparison.Ordinal);
            Assert.True(card.Verdict.Kind == BenchVerdict.NoValues == card.Values.Athletes.Count() < 8, $"{card.Verdict.Kind} with {card.Values.Athletes.Count()} athletes");
            Assert.DoesNotContain("NaN", string.Join(' ', card.Weak.Select(p => p.Text).Append(card.Verdict.Why).Append(card.Error.Explanation)), StringComparison.Ordinal);
        });
        Assert.Equal(6, bench.Compare(sketches).Rivals.Count);
    }

    [Fact]
    public void Judge_FaultySketch_HasACardWithoutValues()
        => Assert.All([Benches.Own(v => v[0], "m") with { Unit = "stone" }, Benches.Own(v => v[0], "m") with { Id = "No" }], sketch =>
        {
            var card = Bench("no retest").Judge(sketch);
            Assert.Equal((BenchVerdict.NoValues, 0, null, null), (card.Verdict.Kind, card.Values.Values.Count, card.Occasion, card.Overlap));
            Assert.Equal("No player has a value; 8 are needed.", card.Verdict.Why);
        });

    [Fact]
    public void Judge_Twice_IsTheSameCard()
    {
        var (bench, sketch) = (Bench("no retest"), Benches.Own(v => v[0], "m"));

        Assert.Same(bench.Judge(sketch), bench.Judge(sketch));
        Assert.NotSame(bench.Judge(sketch), bench.Judge(sketch with { }));
        Assert.Throws<ArgumentNullException>(() => bench.Judge(null!));
    }

    // Library metrics and inputs are read off the season once, whatever number of sketches is judged.
    [Fact]
    public void Judge_ManySketches_ReadsTheLibraryOnce()
    {
        var read = 0;
        var metric = Invented.Metric("a");
        var counting = metric with { FromTrials = day => { Interlocked.Increment(ref read); return metric.FromTrials(day); } };
        var bench = Bench("no retest").Beside(counting);

        bench.Judge(Benches.Own(v => v[0], "m"));
        var first = read;
        bench.Judge(Benches.Own(v => 2 * v[0], "m"));
        Assert.Equal(first, read);
        Assert.Same(bench.Inputs, bench.Inputs);
    }

    // The same season and sketch give the same figures to the last digit: everything drawn has a seed.
    [Fact]
    public void Judge_Anew_GivesTheSameFigures()
    {
        SketchCard Card() => Bench("full days").Judge(Sketch.Day("speed_for_size", "Speed for size", "kg·m/s", Direction.Higher, (1, 5000), day => day.Value("sprint_40yd") is { } t ? (AnyQuantity?)day.BodyMass * Length.FromYards(40) / t : null));
        var (one, two) = (Card(), Card());

        Assert.Equal(one.Verdict, two.Verdict);
        Assert.Equal((one.Error.ByThemselves, one.Error.Together), (two.Error.ByThemselves, two.Error.Together));
        Assert.Equal(one.Overlap!.Own?.Interval, two.Overlap!.Own?.Interval);
    }

    // A sprint time is worked out of gates, whose minutes are those of the whole sprint: said once.
    [Fact]
    public void Cost_CountsATestOnce()
    {
        var card = Bench("full days").Judge(Sketch.Day("gain", "Gain", "s", Direction.Lower, (0, 10), day => day.Value("sprint_40yd") - day.Value("sprint_10yd")) with { Minutes = 1.5 });

        Assert.Equal(1.5, card.Cost.ExtraMinutes);
        Assert.Equal([("sprint through gates, 2 attempts", 2.0)], card.Cost.Tests.Select(t => (t.Test, t.MinutesPerAthlete)));
    }

    private static BenchSquad Bench(string season)
    {
        DateOnly[] all = [.. Benches.Retest, Course.June];
        IReadOnlyList<IReadOnlyList<AthleteDay>> Days(int athletes, Func<int, int, double> value, params DateOnly[] dates) => Benches.Days(athletes, dates.Length > 0 ? dates : all, ("m", value), ("a", (i, d) => 50 + i % 7 + 0.2 * d));
        string[] eight = [.. Enumerable.Range(0, 8).Select(i => $"group {i}")];
        return season switch
        {
            "empty" => new(new SquadProfile { Squad = [] }, [], []),
            "no athletes" => new(new SquadProfile { Squad = [], Retests = [RepeatDays.Pair([], [])] }, [[], []], [Invented.Metric("a")]),
            "no trials" => Benches.Bench(Benches.Days(12, all), true, null, "a"),
            "one day" => Benches.Bench(Days(12, s_level, Course.June), false, null, "a"),
            "no retest" => Benches.Bench(Days(12, s_level, Course.Baseline, Course.June), false, null, "a"),
            "retest only" => Benches.Bench(Days(12, s_level, Benches.Retest), true, null, "a"),
            "equal" => Benches.Bench(Days(12, (_, _) => 5), true, null, "a"),
            "equal but for rounding" => Benches.Bench(Days(12, (i, d) => (i + d) % 2 == 0 ? 0.3 : 0.1 + 0.2), true, null, "a"),
            "eight in eight groups" => Benches.Bench(Days(8, s_level), true, eight, "a"),
            "seven" => Benches.Bench(Days(7, s_level), true, null, "a"),
            "nobody in the squad list" => new(new SquadProfile { Squad = [], Retests = [RepeatDays.Pair(Days(12, s_level)[0], Days(12, s_level)[1])] }, Days(12, s_level), [Invented.Metric("a")]),
            "zeros" => Benches.Bench(Days(12, (i, _) => i % 3 == 0 ? 0 : i), true, null, "a"),
            "negative" => Benches.Bench(Days(12, (i, d) => -s_level(i, d)), true, null, "a"),
            "two groups of four" => Benches.Bench(Days(8, s_level), true, ["Line", "Backs"], "a"),
            "one athlete" => Benches.Bench(Days(1, s_level), true, null, "a"),
            "exact repeats" => Benches.Bench(Days(12, (i, _) => 100 + i * i), true, null, "a"),
            "full days" => Full(),
            _ => throw new ArgumentOutOfRangeException(nameof(season), season, "no such season"),
        };
    }

    // Twelve athletes with a trial of every kind, all readings 1 % apart from one to the next, and a little from day to day.
    private static BenchSquad Full()
    {
        IReadOnlyList<AthleteDay> Day(DateOnly date, int d) => [.. Enumerable.Range(0, 12).Select(i =>
        {
            var factor = 1 + 0.01 * i + 0.002 * ((i * 7 + d * 5) % 11 - 5);
            return FullDay.Good with
            {
                AthleteId = $"a{i + 1}", Date = date, BodyMass = FullDay.Good.BodyMass * (1 + 0.013 * (i * 5 % 12)), BodyMassDate = date,
                Trials = [.. FullDay.Good.Trials.Select(t => t is SprintTrial run ? run with { Splits = [.. run.Splits.Select(s => s with { Time = s.Time * factor })] } : t)],
            };
        })];
        return Benches.Bench([Day(Course.Baseline, 0), Day(Course.Retest, 1), Day(Course.June, 2)], retest: true, ["Line", "Backs"]).Beside(MetricCatalogue.All);
    }
}
