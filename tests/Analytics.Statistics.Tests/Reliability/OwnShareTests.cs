using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

/// <summary>Own share against residuals of R's <c>lm</c> (own-share.R), and what it says at the ends.</summary>
public sealed class OwnShareTests
{
    // Both sides are sums of 18 products in doubles; the ratios lose 3 digits at most.
    private const double Relative = 1e-11;

    private static readonly double[] s_first = [5, 3, 8, 1, 9, 4, 7, 2, 6], s_second = [5.2, 2.7, 8.1, 1.4, 8.6, 4.3, 7.1, 1.8, 6.3];
    private static readonly double[] s_other = [1, 7, 2, 9, 4, 4, 3, 8, 5];

    private static readonly OccasionPair s_test = new(s_first, s_second), s_unlike = new(s_other, [1.3, 6.8, 2.2, 8.7, 4.1, 4.4, 2.8, 8.2, 5.1]);

    [Theory]
    [InlineData("one", new[] { 4 }, false)]
    [InlineData("two", new[] { 4, 5 }, false)]
    [InlineData("two_in_groups", new[] { 4, 5 }, true)]
    public void Of_FixedData_AgreesWithResidualsOfR(string name, int[] others, bool inGroups)
    {
        var own = OwnShare.Of(Pair(2, inGroups), [.. others.Select(o => Pair(o - 1, inGroups))], inGroups ? 3 : 1, new() { Resamples = 100 });

        Oracle.Close(Expected(name, "share"), own.Value!.Value, Relative);
        Oracle.Close(Expected(name, "repeats"), own.RemainderRepeats!.Value, Relative);
        Oracle.Close(Expected(name, "from_others"), own.FromOthers, Relative);
        Oracle.Close(Expected(name, "without_first"), own.LeaveOneOut[0]!.Value, Relative);
        Oracle.Close(Expected(name, "without_last"), own.LeaveOneOut[^1]!.Value, Relative);
        Assert.Equal((18, others.Length, 18), (own.N, own.Others, own.LeaveOneOut.Count));
    }

    [Fact]
    public void Of_ExactCopy_HasNothingOfItsOwn()
    {
        var copy = new OccasionPair([.. s_first.Select(v => 3 * v - 20)], [.. s_second.Select(v => 3 * v - 20)]);

        Assert.All([OwnShare.Of(s_test, [copy]), OwnShare.Of(s_test, [s_unlike, copy]), OwnShare.Of(s_test, [copy, s_unlike])], own =>
        {
            Assert.Equal((0.0, new Interval(0, 0, 0.95)), (own.Value, own.Interval));
            Assert.Null(own.RemainderRepeats);
            Assert.Equal(1, own.FromOthers, 1e-12);
            Assert.All(own.LeaveOneOut, share => Assert.Equal(0, share));
        });
    }

    // y is the sum of the two, each of which alone gives a part of it.
    [Fact]
    public void Of_SumOfTheOthers_HasNothingOfItsOwn()
    {
        var sum = new OccasionPair([.. s_first.Zip(s_unlike.First, (a, b) => a - 2 * b)], [.. s_second.Zip(s_unlike.Second, (a, b) => a - 2 * b)]);

        Assert.Equal(new Interval(0, 0, 0.95), OwnShare.Of(sum, [s_test, s_unlike]).Interval);
        // As share() of own-share.R works it out, by R 4.2.2.
        Oracle.Close(0.2228687729632, OwnShare.Of(sum, [s_test]).Value!.Value, Relative);
    }

    [Fact]
    public void Of_SecondOtherTheSameAgain_SaysWhatOneSays()
    {
        var again = new OccasionPair([.. s_unlike.First.Select(v => v / 7)], [.. s_unlike.Second.Select(v => v / 7)]);
        var (one, two) = (OwnShare.Of(s_test, [s_unlike]), OwnShare.Of(s_test, [s_unlike, again]));

        // One degree of freedom more is spent: 9 − 1 = 8, so the factor is 8/6 in the place of 8/7.
        Assert.Equal(one.Value!.Value * 7 / 6, two.Value!.Value, 1e-12);
        Assert.Equal(one.RemainderRepeats!.Value, two.RemainderRepeats!.Value, 1e-12);
    }

    [Fact]
    public void Of_OthersThatDoNotVary_LeaveEverything()
    {
        var flat = new OccasionPair([.. s_first.Select(_ => 4.0)], [.. s_first.Select(_ => 4.0)]);

        Assert.All([OwnShare.Of(s_test, [flat]), OwnShare.Of(s_test, [flat, flat])], own => Assert.Equal((1.0, new Interval(1, 1, 0.95)), (own.Value, own.Interval)));
        Assert.Equal(0, OwnShare.Of(s_test, [flat]).FromOthers);
    }

    // Nothing of the test returns: the second day is the first one turned round, or there is no spread at all.
    [Fact]
    public void Of_TestThatDoesNotReturn_HasNoShare()
    {
        var (turned, flat) = (new OccasionPair(s_first, [.. s_first.Select(v => 10 - v)]), new OccasionPair([.. s_first.Select(_ => 4.0)], [.. s_first.Select(_ => 4.0)]));

        Assert.All([OwnShare.Of(turned, [s_unlike]), OwnShare.Of(flat, [s_unlike])], own =>
        {
            Assert.Null(own.Value);
            Assert.Null(own.Interval);
            Assert.Contains("nothing of the test itself returns on the second occasion", own.ToString(), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Sheet_SaysWhatItRestsOn()
    {
        var text = OwnShare.Of(s_test, [s_unlike]).ToString();

        Assert.Contains("9 athletes on two occasions, 1 other test", text, StringComparison.Ordinal);
        Assert.Contains("share of its own", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_SameSeed_GivesTheSameAndAnotherSeedAlmost()
    {
        var (one, again, other) = (OwnShare.Of(s_test, [s_unlike]), OwnShare.Of(s_test, [s_unlike]), OwnShare.Of(s_test, [s_unlike], options: new() { Resamples = 2000, Seed = 2 }));

        Assert.Equal(one.Interval, again.Interval);
        Assert.NotEqual(one.Interval, other.Interval);
        Assert.Equal(one.Value, other.Value);
    }

    [Fact]
    public void Of_BadArguments_AreRefusedInWords()
    {
        var few = new OccasionPair([1, 2, 3, 4], [1, 2, 3, 5]);

        Assert.Contains("0 other tests; allowed: 1 or 2.", Assert.Throws<ArgumentException>(() => OwnShare.Of(s_test, [])).Message, StringComparison.Ordinal);
        Assert.Contains("3 other tests; allowed: 1 or 2.", Assert.Throws<ArgumentException>(() => OwnShare.Of(s_test, [s_test, s_test, s_test])).Message, StringComparison.Ordinal);
        Assert.Contains("The columns hold 9 and 4 athletes", Assert.Throws<ArgumentException>(() => OwnShare.Of(s_test, [few])).Message, StringComparison.Ordinal);
        Assert.Contains("4 athletes in 1 groups; at least 5 are needed.", Assert.Throws<ArgumentException>(() => OwnShare.Of(few, [few])).Message, StringComparison.Ordinal);
        Assert.Contains("9 athletes in 6 groups; at least 10 are needed.", Assert.Throws<ArgumentException>(() => OwnShare.Of(s_test, [s_unlike], 6)).Message, StringComparison.Ordinal);
        Assert.Contains("groups is 0; allowed: 1 or more", Assert.ThrowsAny<ArgumentException>(() => OwnShare.Of(s_test, [s_unlike], 0)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => OwnShare.Of(null!, [s_test]));
        Assert.Throws<ArgumentNullException>(() => OwnShare.Of(s_test, null!));
        Assert.Throws<ArgumentNullException>(() => OwnShare.Of(s_test, [null!]));
    }

    [Fact]
    public void Pair_BadColumns_AreRefusedInWords()
    {
        Assert.Contains("2 values on the first occasion and 3 on the second", Assert.Throws<ArgumentException>(() => new OccasionPair([1, 2], [1, 2, 3])).Message, StringComparison.Ordinal);
        Assert.Contains("first holds 1 values; at least 2 are needed.", Assert.Throws<ArgumentException>(() => new OccasionPair([1], [1])).Message, StringComparison.Ordinal);
        Assert.ThrowsAny<ArgumentException>(() => new OccasionPair([1, double.NaN], [1, 2]));
        Assert.Throws<ArgumentNullException>(() => new OccasionPair([1, 2], null!));
    }

    // Columns of own-share.csv: athlete, group, then y, a, b of the first occasion and of the second.
    private static OccasionPair Pair(int column, bool inGroups)
    {
        string[][] rows = [.. Oracle.Rows("own-share.csv")];
        return new(Column(rows, column, inGroups), Column(rows, column + 3, inGroups));
    }

    private static double[] Column(string[][] rows, int column, bool inGroups)
    {
        var means = rows.GroupBy(r => inGroups ? r[1] : "").ToDictionary(g => g.Key, g => g.Average(r => Oracle.Number(r[column])));
        return [.. rows.Select(r => Oracle.Number(r[column]) - (inGroups ? means[r[1]] : 0))];
    }

    private static double Expected(string name, string quantity)
        => Oracle.Rows("own-share-expected.csv").Where(r => r[0] == name && r[1] == quantity).Select(r => Oracle.Number(r[2])).Single();
}
