using Analytics.Metrics.Trials;
using Analytics.Season.Cells;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

/// <summary>A comma before three digits may be a decimal comma or group thousands; the rest of the table settles it where it can.</summary>
public sealed class DecimalCommaTests
{
    private const string Table = RunnerClip.Day + "contact.csv";

    [Theory]
    [InlineData("0,5", true)]
    [InlineData("12,34", true)]
    [InlineData("1043,221", true)]
    [InlineData("0,985", true)]
    [InlineData("1.234,5", true)]
    [InlineData("1,234,567", false)]
    [InlineData("1,234.5", false)]
    [InlineData("8,333", null)]
    [InlineData("250", null)]
    [InlineData("250.5", null)]
    [InlineData("Smith, John", null)]
    [InlineData("", null)]
    public void A_cell_tells_or_not(string cell, bool? isDecimal) => Assert.Equal(isDecimal, NumberText.HasDecimalComma(cell));

    // 120 Hz in ms to three decimals: 0,000 and 16,667 tell nothing by range, but 0,000 can only be a decimal comma.
    [Fact]
    public void Read_TimeStampsWithThreeDecimals_AreReadByTheRestOfTheTable()
    {
        var clip = new RunnerClip { Hertz = 120 };
        var stamps = "frame;time_ms\n" + string.Join('\n', Enumerable.Range(0, clip.ContactFrame + 20).Select(f => $"{f};{FormattableString.Invariant($"{f / 0.12:0.000}").Replace('.', ',')}"));
        using var season = RunnerClip.Season().With(Table, clip.Row()).With(RunnerClip.Day + "clips/a.csv", clip.Long()).With(RunnerClip.Day + "clips/a.times.csv", stamps);

        var data = season.Read();

        Ledger.Check(data);
        Assert.Empty(data.HeldBack);
        Assert.Equal(120, Assert.Single(data.Days[0].Athletes[0].Of<ContactTrial>()).Clock.Rate.Hertz, 0.01);
    }

    [Theory]
    [InlineData("1,250", false)]
    [InlineData("1,250;3\nP001;back_squat;2;102,5", true)]
    [InlineData("1,250;3\nP001;back_squat;2;1,250,000", false)]
    public void Read_AmbiguousLoad_IsReadAsDecimalOnlyWhenTheTableSettlesIt(string loads, bool settled)
    {
        using var season = new TemporarySeason().With("testing/2026-03-02/lifts.csv", $"athlete_id;lift;set;load_lb;reps\nP001;back_squat;1;{loads};3\n");
        var data = season.Read();
        Ledger.Check(data);
        // Settled, it is 1.25 lb beside 102.5 lb, and another check asks about that.
        var first = data.HeldBack.Single(h => h.Line == 2).Reason;
        Assert.Equal(!settled, first.Contains("may be 1.25 or 1250", StringComparison.Ordinal));
    }
}
