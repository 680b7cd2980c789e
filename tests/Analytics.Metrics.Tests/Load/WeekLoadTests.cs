using System.Globalization;
using Analytics.Metrics.Load;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Load;

/// <summary>Weeks of load against tests/oracles/load/weeks.csv and the printed check table of docs/methods/load.md.</summary>
public class WeekLoadTests
{
    private static readonly DateOnly Monday = new(2026, 3, 2);

    public static TheoryData<string> Weeks => [.. OracleTable.Read("load/weeks.csv").Select(r => r.Text("week"))];

    [Theory]
    [MemberData(nameof(Weeks))]
    public void Of_EitherDivisor_AgreesWithTheTable(string name)
    {
        var row = OracleTable.Read("load/weeks.csv").Single(r => r.Text("week") == name);
        var sessions = Sessions([.. row.Text("loads_au").Split(';').Select(l => double.Parse(l, CultureInfo.InvariantCulture))]);
        foreach (var (divisor, word) in new[] { (SdDivisor.Sample, "sample"), (SdDivisor.Population, "population") })
        {
            var week = WeekLoad.Of(Monday.AddDays(3), sessions, divisor);
            Assert.Equal(divisor, week.Divisor);
            Near(row["total_au"], week.TotalAu);
            Near(row["mean_au"], week.MeanAu);
            Near(row[$"sd_{word}_au"], week.SdAu);
            Near(row[$"monotony_{word}"], week.Monotony);
            Near(row[$"strain_{word}_au"], week.StrainAu);
        }
    }

    // The check table as printed: computed from Foster's definitions with six digits.
    [Theory]
    [InlineData(new double[] { 300, 450, 0, 600, 250, 700, 0 }, SdDivisor.Sample, 2300, 328.571, 273.644, 1.20073, 2761.67)]
    [InlineData(new double[] { 300, 450, 0, 600, 250, 700, 0 }, SdDivisor.Population, 2300, 328.571, 253.345, 1.29693, 2982.95)]
    [InlineData(new double[] { 300, 300, 300, 300, 300, 300, 0 }, SdDivisor.Sample, 1800, 257.143, 113.389, 2.26779, 4082.02)]
    [InlineData(new double[] { 540, 180, 480, 180, 420, 600, 0 }, SdDivisor.Sample, 2400, 342.857, 223.735, 1.53243, 3677.83)]
    public void Of_CheckTable_ToThePrintedDigits(double[] loads, SdDivisor divisor, double total, double mean, double sd, double monotony, double strain)
    {
        var week = WeekLoad.Of(Monday, Sessions(loads), divisor);
        Assert.Equal(total, week.TotalAu!.Value, 9);
        Assert.Equal((mean, sd, monotony, strain), (Math.Round(week.MeanAu!.Value, 3), Math.Round(week.SdAu!.Value, 3), Math.Round(week.Monotony!.Value, 5), Math.Round(week.StrainAu!.Value, 2)));
    }

    // √(7/6) − 1 = 8.01 %.
    [Fact]
    public void Of_Population_IsHigherBy8PerCent()
    {
        var sessions = Sessions([300, 450, 0, 600, 250, 700, 0]);
        Assert.Equal(8.01, Math.Round(100 * (WeekLoad.Of(Monday, sessions, SdDivisor.Population).Monotony!.Value / WeekLoad.Of(Monday, sessions, SdDivisor.Sample).Monotony!.Value - 1), 2));
    }

    [Theory]
    [InlineData(new double[] { 300, 300, 300, 300, 300, 300, 300 })]
    [InlineData(new double[] { 66.6, 66.6, 66.6, 66.6, 66.6, 66.6, 66.6 })]
    public void Of_EqualDays_IsNotComputableInWords(double[] loads)
    {
        var week = WeekLoad.Of(Monday, Sessions(loads), SdDivisor.Sample);
        Assert.Equal((0d, null, null), (week.SdAu, week.Monotony, week.StrainAu));
        Assert.Equal("not computable: the same load on all seven days, so the SD is 0", week.NotComputable);
        Assert.Contains("same load on all seven days", week.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("∞", week.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_WeekWithoutSessions_IsNotComputable()
        => Assert.Equal("not computable: no session in this week", WeekLoad.Of(Monday, [], SdDivisor.Sample).NotComputable);

    [Fact]
    public void Of_SessionWithoutRating_MakesTheWeekUnknownAndTheTotalALowerBound()
    {
        SessionWork[] sessions = [.. Sessions([300, 450, 0, 600, 0, 0, 0]), new(Monday.AddDays(4), Duration.FromMinutes(60)), new(Monday.AddDays(4), Rating: 6)];
        var week = WeekLoad.Of(Monday, sessions, SdDivisor.Sample);
        Assert.Equal((null, null, null, null, null), (week.TotalAu, week.MeanAu, week.SdAu, week.Monotony, week.StrainAu));
        Assert.Equal(1350, week.KnownAu, 9);
        Assert.Null(week.Days[4].LoadAu);
        Assert.Equal(0, week.Days[2].LoadAu);
        Assert.Equal("not computable: 2 of 5 sessions without rating or minutes", week.NotComputable);
        Assert.Contains("at least; not computable: 2 of 5", week.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_OtherWeeks_AreNotCountedAndTwoSessionsOfADayAreAdded()
    {
        SessionWork[] sessions = [Session(Monday.AddDays(-1), 900), Session(Monday, 100), Session(Monday, 200), Session(Monday.AddDays(6), 50), Session(Monday.AddDays(7), 900)];
        var week = WeekLoad.Of(Monday.AddDays(6), sessions, SdDivisor.Sample);
        Assert.Equal([300, 0, 0, 0, 0, 0, 50], week.Days.Select(d => d.KnownAu));
        Assert.Equal((Monday, 3), (week.Monday, week.Sessions));
    }

    [Fact]
    public void Sheet_MonotonyAboveTwo_SaysWhatTheReferenceIsNot()
    {
        var text = WeekLoad.Of(Monday, Sessions([300, 300, 300, 300, 300, 300, 0]), SdDivisor.Sample).ToString();
        Assert.Contains("above 2.0 is often quoted", text, StringComparison.Ordinal);
        Assert.Contains("no predictor of injury", text, StringComparison.Ordinal);
        Assert.Contains("SD with divisor n − 1", text, StringComparison.Ordinal);
        Assert.DoesNotContain("above 2.0", WeekLoad.Of(Monday, Sessions([300, 450, 0, 600, 250, 700, 0]), SdDivisor.Sample).ToString(), StringComparison.Ordinal);
    }

    internal static SessionWork Session(DateOnly day, double load) => new(day, Duration.FromMinutes(load / 5), 5, 0);

    /// <summary>One session of rating 5 on every day that has a load.</summary>
    private static SessionWork[] Sessions(double[] loads) => [.. loads.Select((l, i) => (l, i)).Where(d => d.l > 0).Select(d => Session(Monday.AddDays(d.i), d.l))];

    private static void Near(double expected, double? actual) => Assert.Equal(expected, actual!.Value, 1e-9 * expected);
}
