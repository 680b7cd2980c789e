using Analytics.Metrics.Bench;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics.Resampling;

namespace Analytics.Metrics.Tests.Bench;

/// <summary>Rival definitions on the same players. One attempt in four is spoilt, so the best of three returns where the mean does not.</summary>
public class RivalTableTests
{
    private static readonly MetricSketch s_idea = Idea("own_idea", "Own idea", (t, _) => t.Value);

    [Fact]
    public void Best_OfAttemptsOfWhichSomeAreSpoilt_RepeatsBetterThanTheMean()
    {
        var table = Bench(40).Compare(s_idea.MeanOf(), s_idea.BestOf());
        var gain = table.Rivals[1].Against!;

        Assert.Null(table.Rivals[0].Against);
        Assert.Equal(40, gain.Athletes);
        Assert.True(gain.Interval!.Value.Low > 0);
        // R 4.2.2, aov of the drawn attempts on athlete and day: ICC(3,1) 0.7549207447 of the best and 0.3713415082 of the mean.
        Assert.Equal(0.3835792366, gain.Difference, 1e-9);
        Assert.StartsWith("Own idea, best repeats better than Own idea, mean: ICC higher by 0.38 (", table.Words, StringComparison.Ordinal);
        Assert.EndsWith(" on the same 40 players.", table.Words, StringComparison.Ordinal);
        Assert.Equal("Own idea, best repeats better than its rivals.", Bench(40).Compare(s_idea.BestOf(), s_idea.MeanOf()).Words);
    }

    [Fact]
    public void Same_Definition_GainsNothing()
    {
        var table = Bench(40).Compare(s_idea.MeanOf(), s_idea.MeanOf("again"));

        Assert.Equal(0, table.Rivals[1].Against!.Difference);
        Assert.Equal("Which of them repeats better cannot be told with these players; take the simpler one.", table.Words);
    }

    [Fact]
    public void Players_WithoutTheRival_AreLeftOutOfBoth()
    {
        var rare = Idea("rare", "Rare", (t, day) => day.AthleteId.Length > 2 ? t.Value : null);

        // a1 to a9 have none.
        Assert.Equal(31, Bench(40).Compare(s_idea, rare).Rivals[1].Against!.Athletes);
        Assert.Null(Bench(16).Compare(s_idea, rare).Rivals[1].Against);
    }

    [Fact]
    public void Retest_Missing_SaysSo()
    {
        var bench = Bench(40);
        var table = new BenchSquad(bench.Profile with { Retests = [] }, bench.Days, []).Compare(s_idea.MeanOf(), s_idea.BestOf());

        Assert.Equal("No retest of enough players: which of them repeats better cannot be told.", table.Words);
    }

    // That the first is better than one rival says nothing of another that too few did.
    [Fact]
    public void First_BetterThanOneRivalOnly_IsNotCalledTheBest()
    {
        var few = Idea("few", "Few", (t, day) => day.AthleteId is "a1" or "a2" ? t.Value : null);

        Assert.Equal("Which of them repeats better cannot be told with these players; take the simpler one.", Bench(40).Compare(s_idea.BestOf(), s_idea.MeanOf(), few).Words);
    }

    // A rival that is the same for everybody has no ICC; one with a fault has no values.
    [Fact]
    public void Rivals_ThatSayNothing_HaveNoGain()
    {
        var table = Bench(40).Compare(s_idea, Idea("flat", "Flat", (t, _) => t.Value * 0 + 0.1), s_idea with { Id = "cmj_height" });

        Assert.Equal([null, null, null], table.Rivals.Select(r => r.Against));
    }

    [Fact]
    public void Compare_One_IsRefused()
    {
        Assert.Contains("1 definition given; two or more are needed to compare.", Assert.Throws<ArgumentException>(() => Bench(8).Compare(s_idea)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => Bench(8).Compare(null!));
    }

    private static MetricSketch Idea(string id, string label, Func<NumberTrial, AthleteDay, AnyQuantity?> value) => Sketch.Each(id, label, "1", Direction.Higher, (0, 1000), value);

    private static BenchSquad Bench(int athletes)
    {
        IReadOnlyList<AthleteDay> Day(int day) => [.. Enumerable.Range(0, athletes).Select(i =>
        {
            var draws = new NormalDraws((ulong)(1000 * day + i));
            var level = 100 + 5 * new NormalDraws((ulong)(9000 + i)).Next();
            return Invented.Day($"a{i + 1}", Benches.Retest[day], [.. Enumerable.Range(0, 3).Select(_ => (Trial)Invented.Number(level + draws.Next() - (draws.NextUniform() < 0.25 ? 20 : 0)))]);
        })];
        return Benches.Bench([Day(0), Day(1)], retest: true);
    }
}
