using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Filtering;

public class ResidualAnalysisTests
{
    public static TheoryData<string> Series => ["ankle_x", "ankle_y", "heel_y", "hip_y"];

    [Theory]
    [MemberData(nameof(Series))]
    public void Of_Walk_IsTheTable(string series)
    {
        var result = new ResidualAnalysis(Walking.Rate).Of(Walking.Raw($"{series}_cm"));
        var rows = OracleTable.Read("motion/residuals_walking.csv");
        Assert.Equal(20, rows.Count);
        for (var i = 0; i < rows.Count; i++)
        {
            Assert.Equal(rows[i]["fc_hz"], result.Settings.Cutoffs[i].Hertz, 1e-12);
            Assert.Equal(rows[i][$"R_{series}_cm"], result.Residuals[i], 1e-9);
        }
        var choice = OracleTable.Read("motion/residual_choices.csv").Single(r => r.Text("series") == series);
        Assert.Equal(ResidualState.Chosen, result.State);
        Assert.Equal(choice["slope_cm_hz"], result.TailSlope!.Value, 1e-9);
        Assert.Equal(choice["intercept_cm"], result.NoiseLevel!.Value, 1e-9);
        Assert.Equal(choice["cutoff_hz"], result.Cutoff!.Value.Hertz, 1e-8);
    }

    // The vector sweep against the plain filter, for a number of cut-offs that fills no whole vector.
    [Fact]
    public void Of_SevenCutoffs_AgreeWithFilteringOneByOne()
    {
        var settings = new ResidualSettings(Frequency.FromHertz(2.5), Frequency.FromHertz(1.5), 7, Frequency.FromHertz(7));
        var x = Walking.Raw("toe_y_cm");
        var result = new ResidualAnalysis(Walking.Rate, settings).Of(x);
        for (var i = 0; i < 7; i++)
        {
            var y = new double[x.Length];
            new LowPass(settings.Cutoffs[i]).Apply(x, Walking.Rate, y);
            Assert.Equal(Math.Sqrt(x.Zip(y, (a, b) => (a - b) * (a - b)).Average()), result.Residuals[i], 1e-11);
        }
    }

    [Fact]
    public void Of_KnownNoise_FindsItsLevel()
    {
        var random = new Random(11);
        double[] x = [.. Enumerable.Range(0, 600).Select(i => (40 * Math.Sin(2 * Math.PI * 1.1 * i / 120)) + Noise.Normal(random))];
        var result = new ResidualAnalysis(Frequency.FromHertz(120)).Of(x);
        Assert.Equal(ResidualState.Chosen, result.State);
        // Noise SD 1; the SD of an SD from 600 samples is 3 %, four of those.
        Assert.Equal(1, result.NoiseLevel!.Value, 0.12);
    }

    [Fact]
    public void Of_ShiftAndScale_KeepTheCutoff()
    {
        var (x, analysis) = (Walking.Raw("heel_y_cm"), new ResidualAnalysis(Walking.Rate));
        var (plain, moved) = (analysis.Of(x), analysis.Of([.. x.Select(v => 5 - (0.01 * v))]));
        Assert.Equal(plain.Cutoff!.Value.Hertz, moved.Cutoff!.Value.Hertz, 1e-6);
        Assert.Equal(0.01 * plain.NoiseLevel!.Value, moved.NoiseLevel!.Value, 1e-9);
    }

    [Fact]
    public void Of_NoNoise_SaysThereIsNoStraightTail()
    {
        double[] x = [.. Enumerable.Range(0, 300).Select(i => Math.Exp(-Math.Pow((i - 150) / 3.0, 2)))];
        var result = new ResidualAnalysis(Frequency.FromHertz(120)).Of(x);
        Assert.Null(result.Cutoff);
        Assert.Equal(ResidualState.NoStraightTail, result.State);
        Assert.Contains("only 96 % of it", result.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_MarkerAtRest_HasNoTail()
    {
        var result = new ResidualAnalysis(Frequency.FromHertz(120)).Of(new double[50]);
        Assert.Equal(ResidualState.NoStraightTail, result.State);
        Assert.Contains("no straight tail from 12 Hz", result.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NoiseAlone_DoesNotCross()
    {
        var random = new Random(5);
        var result = new ResidualAnalysis(Frequency.FromHertz(60)).Of([.. Enumerable.Range(0, 2000).Select(_ => Noise.Normal(random))]);
        Assert.Equal(ResidualState.NoCrossing, result.State);
        Assert.Contains("hardly exceeds the noise level", result.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TooFewOrTooSlow_SaysSo()
    {
        Assert.Equal(ResidualState.TooFewSamples, new ResidualAnalysis(Walking.Rate).Of([1, 2, 3]).State);
        var slow = new ResidualAnalysis(Frequency.FromHertz(30)).Of(new double[40]);
        Assert.Equal(ResidualState.RateTooLow, slow.State);
        Assert.Contains("more than 40 frames a second; the clip has 30", slow.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NotFinite_NamesTheSample()
        => Assert.Contains("Sample 1 is NaN", Assert.Throws<ArgumentException>(() => new ResidualAnalysis(Walking.Rate).Of([1, double.NaN])).Message, StringComparison.Ordinal);

    [Fact]
    public void Settings_TailOfTwo_IsRefused()
        => Assert.Contains("hold at least 3", Assert.Throws<ArgumentOutOfRangeException>(() => new ResidualSettings(Frequency.FromHertz(1), Frequency.FromHertz(1), 10, Frequency.FromHertz(9))).Message, StringComparison.Ordinal);
}
