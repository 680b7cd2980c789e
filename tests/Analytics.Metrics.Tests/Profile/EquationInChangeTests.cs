using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Change;
using static Analytics.Metrics.Tests.Profile.Invented;

namespace Analytics.Metrics.Tests.Profile;

/// <summary>
/// Half-widths of the 95 % interval of a change, by hand: qnorm(.975) √(2 TE² + what the equations add), in R 4.2.2. The typical error is a known 1.
/// </summary>
public class EquationInChangeTests
{
    private static readonly PublishedError s_one = new(null, 1, "key");

    [Fact]
    public void Change_BothMeasured_HasTheTypicalErrorOnly()
    {
        var change = Change(Number(100), Number(103));
        Assert.Equal(2.7718076487, Reach(change), 9);
        Assert.Null(change.Remark);
    }

    // 2 + 1.2² + 0.5² + 0.4² = 3.85.
    [Fact]
    public void Change_OneEstimated_AddsTheWholeEquationError()
    {
        var later = Change(Number(100), Estimated(103, 1.2, 0.5, 0.4));
        Assert.Equal(3.84572703915, Reach(later), 9);
        Assert.Equal("the earlier day measured, the later estimated from 5 repetitions: the equation's error is added", later.Remark);
        var earlier = Change(Estimated(100, 1.2, 0.5, 0.4), Number(103));
        Assert.Equal(3.84572703915, Reach(earlier), 9);
        Assert.Equal("the earlier day estimated from 5 repetitions, the later measured: the equation's error is added", earlier.Remark);
    }

    // The same with a typical error of 11 athletes: 10 (3.85/2)² = 37.05625 degrees.
    [Fact]
    public void Change_OneEstimatedAndAnErrorOfFewAthletes_HasWelchDegrees()
    {
        var change = Change(Number(100), Estimated(103, 1.2, 0.5, 0.4), new(null, 1, "key", 11));
        Assert.Equal(37.05625, change.Change!.DegreesOfFreedom, 9);
        Assert.Equal(3.97547299994, Reach(change), 9);
    }

    // The lasting error cancels; the fresh one, 0.4, is made twice: 2 + 0.32.
    [Fact]
    public void Change_SameRepetitions_AddsTheFreshErrorOnly()
    {
        var change = Change(Estimated(100, 1.2, 0.5, 0.4), Estimated(110, 1.4, 0.6, 0.4));
        Assert.Equal(2.98532820038, Reach(change), 9);
        Assert.Equal("both days estimated from 5 repetitions: a lasting error of the equation cancels", change.Remark);
    }

    // Errors of 3 and 5 at 100. Two repetitions apart the 3 is in the 5: 2 + 25 − 9 = 18. Four apart half of it is: 2 + 25 + 9 − 9 = 27. From six apart nothing: 36.
    [Theory]
    [InlineData(3, 5, 8.3154229461)]
    [InlineData(5, 9, 10.1842716067)]
    [InlineData(3, 9, 11.7597839072)]
    [InlineData(3, 15, 11.7597839072)]
    public void Change_OtherRepetitions_AddsWhatTheyDoNotShare(double fewer, double more, double expected)
    {
        var change = Change(Estimated(100, 3, repetitions: fewer), Estimated(100, 5, repetitions: more));
        Assert.Equal(expected, Reach(change), 9);
        Assert.Equal(
            FormattableString.Invariant($"one day estimated from {fewer} repetitions, the other from {more} repetitions: the part of the equation's error they do not have in common is added"),
            change.Remark);
        Assert.Equal(Reach(change), Reach(Change(Estimated(100, 5, repetitions: more), Estimated(100, 3, repetitions: fewer))), 12);
    }

    // 3 % on both days: the stronger athlete's larger error in kilograms is the same error.
    [Fact]
    public void Change_SameShareOfTheValue_AddsNothing()
        => Assert.Equal(2.7718076487, Reach(Change(Estimated(100, 3, repetitions: 5), Estimated(110, 3.3, repetitions: 6))), 9);

    // 2 + 1.85 + 1.85.
    [Fact]
    public void Change_TwoEquations_AddsBoth()
    {
        var change = Change(Estimated(100, 1.2, 0.5, 0.4), Estimated(103, 1.2, 0.5, 0.4, equation: "F"));
        Assert.Equal(4.6793498777, Reach(change), 9);
        Assert.Contains("different equations", change.Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void Change_EquationAlwaysTheSame_NeedsNoRemark()
        => Assert.Null(Change(Estimated(100, 9, repetitions: null), Estimated(103, 9, repetitions: null)).Remark);

    // 15 against a reach of 2.77 is clear between measured values, not when an equation with an error of 8 made one of them.
    [Fact]
    public void Change_OneEstimated_NoLongerPassesForAClearGain()
    {
        Assert.Equal(Verdict.ClearGain, Change(Number(100), Number(115)).Verdict);
        Assert.Equal(Verdict.CannotTellYet, Change(Number(100), Estimated(115, 8)).Verdict);
    }

    // Everybody measured before and estimated after, equation's common error 3: it does not average out.
    [Fact]
    public void Change_SharedErrorOfAllAthletes_StaysInTheMean()
    {
        double[] gains = [4, 5, 6, 5, 4, 6];
        var before = Days(March, 100, 100, 100, 100, 100, 100);
        var measured = Profile(6).Change(Metric(published: s_one), before, Days(April, [.. gains.Select(g => 100 + g)]));
        var estimated = Profile(6).Change(Metric(published: s_one), before, [.. gains.Select((g, i) => Day($"a{i + 1}", April, Estimated(100 + g, 0, 3)))]);
        Assert.Equal(Verdict.ClearGain, measured.MeanVerdict);
        Assert.Equal(Verdict.CannotTellYet, estimated.MeanVerdict);
        // SD² 0.8, /6 = 0.133333; √(0.133333 + 9) = 3.022141.
        Assert.Equal(3.022141, estimated.Mean!.Mean.StandardError!.Value, 6);
        Assert.Contains("6 of 6 changes compare values that were not made the same way", estimated.Cautions[^2], StringComparison.Ordinal);
        Assert.DoesNotContain(measured.Cautions, c => c.Contains("same way", StringComparison.Ordinal));
    }

    // Half one way, half the other: the common error cancels in the mean.
    [Fact]
    public void Change_SharedErrorInBothDirections_CancelsInTheMean()
    {
        var change = Profile(2).Change(
            Metric(published: s_one),
            [Day("a1", March, Number(100)), Day("a2", March, Estimated(100, 0, 3))],
            [Day("a1", April, Estimated(104, 0, 3)), Day("a2", April, Number(106))]);
        Assert.Equal(1, change.Mean!.Mean.StandardError!.Value, 9);
    }

    private static AthleteChange Change(NumberTrial before, NumberTrial after, PublishedError? error = null)
        => Assert.Single(Profile(1).Change(Metric(published: error ?? s_one), [Day("a1", March, before)], [Day("a1", April, after)]).Athletes);

    private static SquadProfile Profile(int athletes) => new() { Squad = Squad(athletes), Worthwhile = new Dictionary<string, double> { ["m"] = 1 } };

    private static double Reach(AthleteChange change) => (change.Interval!.Value.High - change.Interval.Value.Low) / 2;
}
