using Analytics.Metrics.Motion;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Motion.Filtering;

/// <summary>Both coordinates of a marker are filtered and analysed side by side; one by one they give the same.</summary>
public class SideBySideTests
{
    private static readonly FrameClock Clock = FrameClock.FromRate(Frequency.FromHertz(240));

    [Theory]
    [InlineData(10)]
    [InlineData(11)]
    [InlineData(300)]
    public void A_filtered_marker_is_its_filtered_coordinates(int samples)
    {
        var filter = new LowPass(Frequency.FromHertz(12));
        var track = Marker(samples);
        double[] x = new double[samples], y = new double[samples];
        filter.Apply([.. track.XMetres.Select(v => v!.Value)], Clock.Rate, x);
        filter.Apply([.. track.YMetres.Select(v => v!.Value)], Clock.Rate, y);
        var smooth = ClipSmoother.Smooth(new(Clock, [track]), filter).Clip.Tracks[0];
        Assert.Equal(x, smooth.XMetres.Select(v => v!.Value));
        Assert.Equal(y, smooth.YMetres.Select(v => v!.Value));
        Assert.Equal(filter, smooth.Smoothing);
        Assert.Equal([new TrackPiece(0, samples)], smooth.Pieces);
    }

    [Fact]
    public void Residuals_of_a_marker_are_those_of_its_coordinates()
    {
        var track = Marker(300);
        var analysis = new ResidualAnalysis(Clock.Rate, ResidualSettings.Sprint);
        var (x, y) = analysis.Of(track);
        foreach (var (together, alone) in new[] { (x, analysis.Of([.. track.XMetres.Select(v => v!.Value)])), (y, analysis.Of([.. track.YMetres.Select(v => v!.Value)])) })
        {
            Assert.Equal(alone.Cutoff, together.Cutoff);
            for (var i = 0; i < alone.Residuals.Count; i++) Assert.Equal(alone.Residuals[i], together.Residuals[i], 1e-15);
        }
    }

    // By the filter itself, cut-off by cut-off.
    [Fact]
    public void Residuals_are_those_of_filtering_with_each_cut_off()
    {
        double[] x = [.. Marker(300).XMetres.Select(v => v!.Value)], filtered = new double[300];
        var result = new ResidualAnalysis(Clock.Rate, ResidualSettings.Sprint).Of(x);
        for (var i = 0; i < result.Residuals.Count; i++)
        {
            new LowPass(ResidualSettings.Sprint.Cutoffs[i]).Apply(x, Clock.Rate, filtered);
            Assert.Equal(1, Math.Sqrt(x.Zip(filtered, (a, b) => (a - b) * (a - b)).Average()) / result.Residuals[i], 1e-11);
        }
    }

    [Fact]
    public void A_piece_too_short_for_the_filter_becomes_a_gap()
    {
        double[] x = [.. Enumerable.Range(0, 40).Select(i => i is 12 or 20 ? double.NaN : i * 0.01)];
        var smooth = ClipSmoother.Smooth(new(Clock, [new("m", MarkerRole.Hip, x, x)]), new LowPass(Frequency.FromHertz(12)));
        Assert.Equal([new TrackPiece(0, 12), new TrackPiece(21, 19)], smooth.Clip.Tracks[0].Pieces);
        Assert.All(Enumerable.Range(12, 9), i => Assert.Null(smooth.Clip.Tracks[0].XMetres[i]));
        Assert.Contains("7 frames from frame 13 left out", Assert.Single(smooth.Notes), StringComparison.Ordinal);
    }

    private static MarkerTrack Marker(int samples)
    {
        var random = new Random(4);
        double[] x = new double[samples], y = new double[samples];
        for (var i = 0; i < samples; i++)
        {
            var t = i / 240.0;
            (x[i], y[i]) = ((3 * t) + (0.2 * Math.Sin(14 * t)) + (0.004 * (random.NextDouble() - 0.5)), 1 + (0.1 * Math.Cos(19 * t)) + (0.004 * (random.NextDouble() - 0.5)));
        }
        return new("m", MarkerRole.Hip, x, y);
    }
}
