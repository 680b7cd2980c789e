using System.Globalization;
using Analytics.Metrics.Contact;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Contact;

/// <summary>Against tests/oracles/contact/frame_rates.csv (50-digit arithmetic).</summary>
public class FrameQuantisationTests
{
    public static TheoryData<string> Rates => [.. OracleTable.Read("contact/frame_rates.csv").Select(r => r.Text("fps"))];

    [Theory]
    [MemberData(nameof(Rates))]
    public void At_every_rate_of_the_table_agrees(string fps)
    {
        var row = OracleTable.Read("contact/frame_rates.csv").Single(r => r.Text("fps") == fps);
        var q = FrameQuantisation.At(Frequency.FromHertz(row["fps"]));
        var nine = Speed.FromMetresPerSecond(9);
        Agrees(row, "frame_ms", q.Frame.Milliseconds);
        Agrees(row, "sd_one_event_ms", q.EventSd.Milliseconds);
        Agrees(row, "sd_interval_ms", q.IntervalSd.Milliseconds);
        Agrees(row, "max_abs_interval_error_ms", q.LargestIntervalError.Milliseconds);
        Agrees(row, "normal_approx_95pct_halfwidth_interval_ms", q.NormalHalfWidth.Milliseconds);
        Agrees(row, "travel_per_frame_at_9mps_cm", q.TravelPerFrame(nine).Centimetres);
        Agrees(row, "sd_position_at_9mps_cm", q.PositionSd(nine).Centimetres);
    }

    // 10 m in 1.2 s: SD of the mean speed by frames alone; triangular half-widths.
    [Theory]
    [InlineData(30, 0.094501919, 25.879773)]
    [InlineData(60, 0.04725096, 12.939887)]
    [InlineData(120, 0.02362548, 6.4699434)]
    [InlineData(240, 0.01181274, 3.2349717)]
    public void Mean_speed_and_triangular_width_agree(double fps, double speedSd, double halfWidthMs)
    {
        var q = FrameQuantisation.At(Frequency.FromHertz(fps));
        Assert.Equal(speedSd, q.MeanSpeedSd(Length.FromMetres(10), Duration.FromSeconds(1.2)).MetresPerSecond, 1e-8);
        Assert.Equal(halfWidthMs, q.TriangularHalfWidth.Milliseconds, 1e-6);
    }

    [Fact]
    public void A_rate_of_0_is_refused()
        => Assert.Contains("a frame rate must lie between 1 and 100,000 Hz; got 0 Hz", Assert.Throws<ArgumentOutOfRangeException>(
            () => FrameQuantisation.At(default)).Message, StringComparison.Ordinal);

    // 1e-9, or half a unit in the last digit printed where the table has fewer.
    private static void Agrees(OracleRow row, string head, double actual)
    {
        var text = row.Text(head);
        var decimals = text.Contains('.', StringComparison.Ordinal) ? text.Length - text.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        var tolerance = Math.Max(1e-9 * Math.Abs(row[head]), 0.5000001 * Math.Pow(10, -decimals));
        Assert.True(Math.Abs(actual - row[head]) <= tolerance, string.Create(CultureInfo.InvariantCulture, $"{head}: expected {text}, got {actual:R}"));
    }
}
