using Analytics.Metrics.Sprinting;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sprinting;

public class TimingConversionTests
{
    // [mayhew2010]: hand 4.85, electronic 5.16 s, difference 0.31 (SD 0.07), 95 % range 0.18 to 0.44 s.
    [Fact]
    public void ToElectronic_MatStudy_GivesItsMeanAndRange()
    {
        var time = TimingConversion.HandLiftMat.ToElectronic(Duration.FromSeconds(4.85));
        Assert.Equal(5.16, time.Value, 1e-9);
        // The printed range is rounded to 0.01 s and made from an unrounded SD.
        Assert.Equal(4.85 + 0.18, time.Interval!.Value.Low, 0.011);
        Assert.Equal(4.85 + 0.44, time.Interval.Value.High, 0.011);
    }

    // [mann2015]: electronic 5.12; experienced 4.90 (0.22 faster, SD 0.07), novice 4.86 (0.26 faster, SD 0.08).
    [Fact]
    public void ToElectronic_CollegeStudy_GivesItsMeans()
    {
        var experienced = TimingConversion.ExperiencedTimers.ToElectronic(Duration.FromSeconds(4.90));
        Assert.Equal(5.12, experienced.Value, 1e-9);
        Assert.Equal(0.07, experienced.StandardError!.Value, 1e-12);
        Assert.Equal(5.12, TimingConversion.NoviceTimers.ToElectronic(Duration.FromSeconds(4.86)).Value, 1e-9);
        Assert.Contains("40 yd only", experienced.Method, StringComparison.Ordinal);
    }

    [Fact]
    public void ToElectronic_NoTime_IsRefused()
        => Assert.Contains("got 0 s", Assert.Throws<ArgumentOutOfRangeException>(() => TimingConversion.HandLiftMat.ToElectronic(Duration.Zero)).Message, StringComparison.Ordinal);
}
