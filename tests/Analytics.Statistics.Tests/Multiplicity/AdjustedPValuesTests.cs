using Analytics.Statistics.Multiplicity;

namespace Analytics.Statistics.Tests.Multiplicity;

public class AdjustedPValuesTests
{
    public static TheoryData<Adjustment> Methods => [.. Enum.GetValues<Adjustment>()];

    // R 4.2.2: p.adjust(c(.01, .04, .03, .005), "holm"), "BH".
    [Fact]
    public void Of_AnyOrder_KeepsThePlaces()
    {
        Assert.Equal([0.03, 0.06, 0.06, 0.02], AdjustedPValues.Of([0.01, 0.04, 0.03, 0.005], Adjustment.Holm).Adjusted.Select(p => Math.Round(p, 12)));
        Assert.Equal([0.02, 0.04, 0.04, 0.02], AdjustedPValues.Of([0.01, 0.04, 0.03, 0.005], Adjustment.BenjaminiHochberg).Adjusted.Select(p => Math.Round(p, 12)));
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_AnyMethod_IsOrderedAndNeverSmaller(Adjustment method)
    {
        double[] p = [0.2, 0.001, 0.001, 0.9, 0.04, 1, 0];
        var adjusted = AdjustedPValues.Of(p, method).Adjusted;
        Assert.All(Enumerable.Range(0, p.Length), i => Assert.InRange(adjusted[i], p[i], 1));
        for (var i = 0; i < p.Length; i++)
        {
            for (var j = 0; j < p.Length; j++) Assert.True(p[i] > p[j] || adjusted[i] <= adjusted[j]);
        }
    }

    [Theory]
    [MemberData(nameof(Methods))]
    public void Of_OneTest_IsUnchanged(Adjustment method) => Assert.Equal(0.03, AdjustedPValues.Of([0.03], method).Adjusted[0], 14);

    // 20 independent tests, all nulls true in 16 of them: the share of false discoveries is 0.05 · 16/20 = 4 % exactly. Standard error 0.18 points.
    [Fact]
    public void BenjaminiHochberg_IndependentTests_HoldsItsRate()
    {
        var random = new Random(5);
        const int Runs = 8000;
        double shares = 0;
        for (var run = 0; run < Runs; run++)
        {
            double[] p = [.. Enumerable.Range(0, 16).Select(_ => random.NextDouble()), .. Enumerable.Range(0, 4).Select(_ => 1e-5 * random.NextDouble())];
            var rejected = AdjustedPValues.Of(p, Adjustment.BenjaminiHochberg).Adjusted.Select((a, i) => (a <= 0.05, i)).Where(r => r.Item1).ToList();
            shares += rejected.Count == 0 ? 0 : rejected.Count(r => r.i < 16) / (double)rejected.Count;
        }

        Assert.InRange(shares / Runs, 0.0335, 0.0465);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.5)]
    public void Of_OutsideZeroToOne_NamesThePlace(double bad)
        => Assert.Contains("p[1] is", Assert.ThrowsAny<ArgumentException>(() => AdjustedPValues.Of([0.2, bad], Adjustment.Holm)).Message, StringComparison.Ordinal);

    [Fact]
    public void Of_NotANumberOrNothing_Throws()
    {
        Assert.Contains("must be a finite number", Assert.ThrowsAny<ArgumentException>(() => AdjustedPValues.Of([0.2, double.NaN], Adjustment.Holm)).Message, StringComparison.Ordinal);
        Assert.Contains("holds 0 values", Assert.ThrowsAny<ArgumentException>(() => AdjustedPValues.Of([], Adjustment.Holm)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => AdjustedPValues.Of([0.2], (Adjustment)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => AdjustedPValues.Of([0.2], Adjustment.Holm).Rejected(0));
    }
}
