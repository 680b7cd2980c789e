using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Filtering;

public class LowPassTests
{
    private static readonly Frequency Sixty = Frequency.FromHertz(60);
    private static readonly LowPass Six = new(Frequency.FromHertz(6));
    private static readonly double[] Series = [.. OracleTable.Read("motion/butterworth_short_series.csv").Select(r => r["x"])];

    private static double[] Filtered(LowPass filter, double[] x, double hertz = 60)
    {
        var y = new double[x.Length];
        filter.Apply(x, Frequency.FromHertz(hertz), y);
        return y;
    }

    public static TheoryData<string, LowPass> Ways => new()
    {
        { "forward_only_zero_state_uncorrected", Six with { DualPass = false, Corrected = false, Padding = EndPadding.None } },
        { "dual_pass_zero_state_corrected", Six with { Padding = EndPadding.None } },
        { "dual_pass_oddpad9_uncorrected", Six with { Corrected = false } },
        { "dual_pass_oddpad9_corrected", Six },
    };

    [Theory]
    [MemberData(nameof(Ways))]
    public void Apply_ShortSeries_IsTheTable(string column, LowPass filter)
    {
        var y = Filtered(filter, Series);
        var rows = OracleTable.Read("motion/butterworth_short_series.csv");
        for (var i = 0; i < y.Length; i++) Assert.Equal(rows[i][column], y[i], 1e-9);
    }

    [Fact]
    public void Apply_Walk_IsTheTableForAllMarkers()
    {
        Assert.Equal(16, Walking.Columns.Count);
        foreach (var column in Walking.Columns)
        {
            var y = Filtered(Six, Walking.Raw(column), 69.9);
            var expected = Walking.Filtered(column);
            for (var i = 0; i < y.Length; i++) Assert.Equal(expected[i], y[i], 1e-9);
        }
    }

    [Fact]
    public void Apply_InPlace_IsTheSame()
    {
        var (apart, x) = (Filtered(Six, Series), (double[])Series.Clone());
        Six.Apply(x, Sixty, x);
        Assert.Equal(apart, x);
    }

    [Fact]
    public void Apply_ShiftAndScale_GoThrough()
    {
        double[] moved = [.. Series.Select(v => 7 - (3 * v))];
        var (y, z) = (Filtered(Six, Series), Filtered(Six, moved));
        for (var i = 0; i < y.Length; i++) Assert.Equal(7 - (3 * y[i]), z[i], 1e-10);
    }

    [Fact]
    public void Apply_Reversed_IsNearlyTheReverse()
    {
        // Forward-backward filtering has no direction inside; only the ends know where it began.
        double[] x = [.. Enumerable.Range(0, 400).Select(i => Math.Sin(i * 0.05) + (0.3 * Math.Sin(i * 1.3)))];
        double[] y = Filtered(Six, x), z = Filtered(Six, [.. x.Reverse()]);
        for (var i = 60; i < 340; i++) Assert.Equal(y[i], z[399 - i], 1e-9);
    }

    [Theory]
    [InlineData(FilterShape.Butterworth)]
    [InlineData(FilterShape.CriticallyDamped)]
    public void Apply_SineAtTheCutoff_LosesThreeDecibels(FilterShape shape)
    {
        double[] x = [.. Enumerable.Range(0, 2400).Select(i => Math.Sin(2 * Math.PI * 6 * i / 240))];
        var y = Filtered(Six with { Shape = shape }, x, 240);
        Assert.Equal(Math.Sqrt(0.5), y[600..1800].Max(), 1e-6);
    }

    [Fact]
    public void Apply_StraightLine_IsUntouched()
    {
        double[] x = [.. Enumerable.Range(0, 50).Select(i => 3 + (0.25 * i))];
        var y = Filtered(Six, x);
        // Odd reflection goes on with the line; the start of each pass settles within the padding only in part.
        for (var i = 0; i < 50; i++) Assert.Equal(x[i], y[i], 0.02);
    }

    [Theory]
    [InlineData(9)]
    [InlineData(1)]
    [InlineData(0)]
    public void Apply_TooFew_SaysHowManyItNeeds(int n)
        => Assert.Contains($"{n} samples are too few for this filter, which needs 10", Assert.Throws<ArgumentException>(() => Filtered(Six, new double[n])).Message, StringComparison.Ordinal);

    [Fact]
    public void Apply_TenSamples_Work() => Assert.All(Filtered(Six, [1, 1, 1, 1, 1, 1, 1, 1, 1, 1]), v => Assert.Equal(1, v, 1e-12));

    [Theory]
    [InlineData(double.NaN, 0)]
    [InlineData(double.NaN, 12)]
    [InlineData(double.PositiveInfinity, 23)]
    [InlineData(double.NegativeInfinity, 5)]
    public void Apply_NotFinite_NamesTheSample(double bad, int at)
    {
        var x = (double[])Series.Clone();
        x[at] = bad;
        Assert.Contains($"Sample {at} is ", Assert.Throws<ArgumentException>(() => Filtered(Six, x)).Message, StringComparison.Ordinal);
        Assert.Contains($"Sample {at} is ", Assert.Throws<ArgumentException>(() => Filtered(Six with { DualPass = false, Padding = EndPadding.None }, x)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Apply_BadSpansOrCutoff_AreRefused()
    {
        Assert.Contains("24 samples cannot be filtered into 3", Assert.Throws<ArgumentException>(() => Six.Apply(Series, Sixty, new double[3])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Filtered(new(Frequency.FromHertz(30)), Series));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LowPass(Frequency.Zero));
    }

    [Fact]
    public void Apply_ManyTracks_AllocatesNothing()
    {
        var (y, coefficients) = (new double[Series.Length], Six.Coefficients(Sixty));
        for (var i = 0; i < 100; i++) Six.Apply(Series, coefficients, y);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1000; i++) Six.Apply(Series, coefficients, y);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
