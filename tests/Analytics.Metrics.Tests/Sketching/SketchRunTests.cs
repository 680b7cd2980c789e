using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sketching;

/// <summary>How often a formula is asked, and what becomes of one that takes too long.</summary>
public class SketchRunTests
{
    private static readonly SketchLimits s_short = new(TimeSpan.FromMilliseconds(300), 2);

    // No trial has a scale of its own, so nothing is tried: once a day and athlete.
    [Fact]
    public void Formula_OfADay_IsAskedOnce()
    {
        var asked = 0;
        var sketch = Sketches.OfDay(day => { asked++; return day.BodyMass; });
        AthleteDay[] days = [Sketches.Lifted("a1", 140), Sketches.Lifted("a2", 150)];

        for (var again = 0; again < 3; again++) Assert.Equal([90, 90], sketch.Values(days));
        Assert.Equal(2, asked);
    }

    // Three tests with scales: the value, and once without each test; the one that counts has two scales, so it is asked without each of these too: 1 + 3 + 2.
    [Fact]
    public void Formula_OfADayWithScales_IsAskedOnceMoreForEach()
    {
        var asked = 0;
        var sketch = Sketches.OfDay(day =>
        {
            asked++;
            return day.Of<ThrowTrial>().Where(t => t.Throw == "overhead_back").Max(t => t.Distance);
        }, "m");
        var day = Days.With(Days.Throw("overhead_back", 3, 14), Days.Throw("overhead_back", 4, 12), Days.Throw("seated_chest", 4, 6), Days.Stair(1.05, 0.5), Days.Lift("back_squat", 140, 1));

        var value = Assert.Single(sketch.Metric.FromTrials(day));
        Assert.Equal((14.0, "3 kg", 6), (value.Value, value.Series, asked));
        sketch.Values(day);
        Assert.Equal(6, asked);
    }

    [Fact]
    public void Formula_OfAnEqualButOtherDay_IsAskedAgain()
    {
        var asked = 0;
        var sketch = Sketches.OfDay(day => { asked++; return day.BodyMass; });
        var day = Sketches.Lifted("a1", 140);

        sketch.Values(day, day with { });
        Assert.Equal(2, asked);
    }

    [Fact]
    public void Formula_ThatNeverEnds_IsLeftBehindAndTheOthersStand()
    {
        using var end = new ManualResetEventSlim();
        var sketch = Sketches.OfDay(day =>
        {
            if (day.AthleteId == "a2") end.Wait();
            return day.BodyMass;
        }) with { Limits = s_short };

        Assert.Equal([90, 90], sketch.Values(Sketches.Lifted("a1", 1), Sketches.Lifted("a2", 1), Sketches.Lifted("a3", 1)));
        Assert.Equal([new SketchTrouble(TroubleKind.Slow, "a2", Days.Date, "the formula took longer than the 0.3 s allowed for one player's day.")], sketch.Troubles);
        Assert.False(sketch.IsGivenUp);
        end.Set();
    }

    [Fact]
    public void Formula_SlowOnTwoDays_IsGivenUp()
    {
        using var end = new ManualResetEventSlim();
        var asked = 0;
        var sketch = Sketches.OfDay(day =>
        {
            Interlocked.Increment(ref asked);
            if (day.AthleteId != "a1") end.Wait();
            return day.BodyMass;
        }) with { Limits = s_short };
        AthleteDay[] days = [.. Enumerable.Range(1, 5).Select(i => Sketches.Lifted($"a{i}", 1))];

        Assert.Equal([90], sketch.Values(days));
        Assert.True(sketch.IsGivenUp);
        Assert.Equal(3, asked);
        Assert.Equal(["a2", "a3", "a4", "a5"], sketch.Troubles.Select(t => t.AthleteId));
        Assert.All(sketch.Troubles.Skip(2), t => Assert.Equal("not worked out: the formula was given up after 2 days that took too long.", t.Message));
        Assert.Empty(sketch.Attempts(days[0]));
        Assert.Empty(sketch.Numbers(days[0]));
        // A copy starts anew.
        Assert.False((sketch with { }).IsGivenUp);
        end.Set();
    }

    // Days made up for asking the formula again tell nothing: they were never tested.
    [Fact]
    public void Attempts_OfMadeUpDays_TellNoTroubles()
    {
        var sketch = Sketches.OfSet((set, _) => set.Load.Kilograms > 145 ? throw new NotSupportedException("no idea") : set.Load);
        var day = Sketches.Lifted("a1", 140, 150, 130);

        Assert.Equal([140, null, 130], sketch.Attempts(day).Select(v => v?.Value));
        Assert.Equal([140, null, 130], sketch.Numbers(day));
        Assert.Empty(sketch.Troubles);
    }

    [Fact]
    public void Season_AskedFromManyThreads_GivesTheSameValuesAndTroubles()
    {
        AthleteDay[] days = [.. Enumerable.Range(0, 200).Select(i => Sketches.Lifted($"a{i:000}", 100 + i))];
        var sketch = Sketches.OfDay(day => day.AthleteId.EndsWith('7') ? throw new NotSupportedException("no idea") : day.Value("back_squat_1rm"));
        var found = new double[8][];

        Parallel.For(0, 8, new ParallelOptions { MaxDegreeOfParallelism = 8 }, thread => found[thread] = sketch.Values(days));

        double[] expected = [.. Enumerable.Range(0, 200).Where(i => i % 10 != 7).Select(i => 100.0 + i)];
        Assert.All(found, values => Assert.Equal(expected, values));
        Assert.Equal(20, sketch.Troubles.Count);
    }

    [Fact]
    public void TimeLimit_ThrowsWhatTheWorkThrows()
    {
        Assert.Throws<NotSupportedException>(() => TimeLimit.Kept(() => throw new NotSupportedException(), TimeSpan.FromSeconds(20)));
        Assert.True(TimeLimit.Kept(() => { }, TimeSpan.FromSeconds(20)));
        Assert.Equal(TimeSpan.FromSeconds(30), SketchLimits.Usual.MadeUp);
    }
}
