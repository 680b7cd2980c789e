using Analytics.Metrics.Strength;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Strength;

/// <summary>Which set speaks for the day; the lower limits named here come from OneRepMaxTests' independent figures.</summary>
public class DayOneRepMaxTests
{
    [Fact]
    public void From_NoSets_IsNull() => Assert.Null(DayOneRepMax.From([]));

    [Fact]
    public void From_SeveralSingles_IsTheHeaviest() => AssertChosen(190, "measured", Single(150), Single(190), Single(180));

    // Twelve with 150 would be 210 by Epley, far above the single, but the equation is not trusted there.
    [Fact]
    public void From_MeasuredSingleAndManyRepetitions_IsTheSingle() => AssertChosen(190, "measured", Single(190), Set(150, 12));

    // 85 x 8 to failure: 105.5, at least 96.5. A single with 100 stands.
    [Fact]
    public void From_SingleWithBackOffSet_IsTheSingle() => AssertChosen(100, "measured", Single(100), Set(85, 8));

    // 98 x 5 to failure: 110.25, at least 102.2. The single with 100 was not a maximum.
    [Fact]
    public void From_SetThatRulesTheSingleOut_IsTheEstimate() => AssertChosen(110.25, "estimated with Brzycki", Single(100), Set(98, 5));

    // A warm-up single: whoever moves 120 twelve times can move more than 120 once, however doubtful the estimate.
    [Fact]
    public void From_SingleBelowAHeavierSet_IsNotTakenForAMaximum() => AssertChosen(168, "estimated with Epley", Single(120), Set(120, 12));

    // 3 x 150 is at least 150; 12 x 120 would give 168 but supports 120 only.
    [Fact]
    public void From_FewRepetitionsAndMany_IsTheFew() => AssertChosen(158.8235, "estimated with Brzycki", Set(120, 12), Set(150, 3));

    [Fact]
    public void From_OrderOfSets_DoesNotMatter()
    {
        LiftSet[] sets = [Single(100), Set(98, 5), Set(85, 8), Set(60, 15)];

        Assert.Equal(DayOneRepMax.From(sets)!.Method, DayOneRepMax.From(sets.Reverse())!.Method);
    }

    // Neither estimate is trusted; the larger load supports more.
    [Fact]
    public void From_DoubtfulSetsOnly_IsTheHeavierAndStaysDoubtful()
    {
        var chosen = DayOneRepMax.From([Set(100, 12), Set(102.5, 11)])!;

        Assert.Equal(102.5, chosen.Load.Kilograms);
        Assert.Equal("estimated from 11 repetitions, more than 10", chosen.Doubt);
    }

    [Fact]
    public void From_TwoLifts_IsRefused()
    {
        var error = Assert.Throws<ArgumentException>(() => DayOneRepMax.From([Single(100), Sets.Of("bench_press", 100, 1)]));

        Assert.Equal("sets", error.ParamName);
        Assert.Contains("back_squat, bench_press", error.Message, StringComparison.Ordinal);
    }

    private static LiftSet Single(double load) => Sets.Of("back_squat", load, 1);

    private static LiftSet Set(double load, int repetitions) => Sets.Of("back_squat", load, repetitions);

    private static void AssertChosen(double kilograms, string method, params LiftSet[] sets)
    {
        var chosen = DayOneRepMax.From(sets)!;
        Assert.Equal(kilograms, chosen.Value.Kilograms, 5e-5);
        Assert.StartsWith(method, chosen.Method, StringComparison.Ordinal);
    }
}
