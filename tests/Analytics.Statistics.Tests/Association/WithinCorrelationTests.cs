using Analytics.Statistics.Association;
using Analytics.Statistics.Association.Repeated;
using static Analytics.Statistics.Tests.Association.TransferOracle;

namespace Analytics.Statistics.Tests.Association;

public sealed class WithinCorrelationTests
{
    private static readonly string[] s_who = [.. Both.Select(i => Athletes[i])];
    private static readonly double[] s_days = [.. Both.Select(i => Times[i])];
    private static readonly double[] s_x = [.. Both.Select(i => X[i]!.Value)];
    private static readonly double[] s_y = [.. Both.Select(i => Y[i]!.Value)];

    [Fact]
    public void Agrees_with_least_squares_refitted_without_each_athlete()
    {
        Held("within", WithinCorrelation.OfAthletes(s_who, s_x, s_y));
        Held("beyond_calendar", WithinCorrelation.BeyondCalendar(s_who, s_days, s_x, s_y));
    }

    [Fact]
    public void Without_days_it_is_the_published_repeated_measures_correlation()
    {
        // R 4.2.2 (r-and-published.tsv, bland1995 r_rm), which prints on from the published -.5067697 [bakdash2017, data of blandaltman1995].
        var who = Oracle.Rows("bland-altman-1995.csv").Select(r => r[0]).ToArray();
        var within = WithinCorrelation.OfAthletes(who, Oracle.Column("bland-altman-1995.csv", 2), Oracle.Column("bland-altman-1995.csv", 1));
        Assert.Equal(-0.5067697422, within.Value, 1e-9);
        Assert.Equal((8, 47), (within.Athletes, within.Pairs));
    }

    [Fact]
    public void What_a_day_does_to_everybody_is_taken_off()
    {
        double[] lift = [7, -2, 30, 45, 60], field = [-3, 8, 12, 20, 41];
        var order = s_days.Distinct().Order().ToList();
        double[] x = [.. s_x.Select((v, i) => v + lift[order.IndexOf(s_days[i])])], y = [.. s_y.Select((v, i) => v + field[order.IndexOf(s_days[i])])];
        var (plain, moved) = (WithinCorrelation.BeyondCalendar(s_who, s_days, s_x, s_y), WithinCorrelation.BeyondCalendar(s_who, s_days, x, y));
        Oracle.Close(plain.Value, moved.Value, 1e-9);
        Oracle.Close(plain.ErrorOfZ!.Value, moved.ErrorOfZ!.Value, 1e-9);
        Assert.True(WithinCorrelation.OfAthletes(s_who, x, y).Value > plain.Value + 0.2);
    }

    [Fact]
    public void Many_athletes_are_left_out_in_blocks()
    {
        string[] who = [.. Enumerable.Range(0, 400).SelectMany(i => Enumerable.Repeat($"P{i}", 3))];
        double[] x = [.. Enumerable.Range(0, 1200).Select(i => Math.Sin(i * 1.7) + i % 3)], y = [.. x.Select((v, i) => v + 2 * Math.Cos(i * 2.3))];
        var r = WithinCorrelation.OfAthletes(who, x, y);
        Assert.Equal(99, r.Sheet().Lines[0].DegreesOfFreedom);
        // Some 3/√1200 = 0.09 of a correlation near 0, and less of a larger one: coarse on purpose, the degrees of freedom above are the check.
        Assert.InRange(r.Interval!.Value.High - r.Interval.Value.Low, 0.01, 0.2);
    }

    [Fact]
    public void Bad_input_is_refused_in_words()
    {
        Assert.Contains("at least 3 are needed", Message(() => WithinCorrelation.OfAthletes(["a", "a", "b", "b"], [1, 2, 3, 5], [1, 2, 2, 4])), StringComparison.Ordinal);
        Assert.Contains("two pairs on one day", Message(() => WithinCorrelation.BeyondCalendar(["a", "a", "b", "b", "c", "c"], [1, 1, 1, 2, 1, 2], [1, 2, 3, 5, 8, 1], [1, 2, 2, 4, 3, 3])), StringComparison.Ordinal);
        Assert.Contains("beyond what the days explain", Message(() => WithinCorrelation.BeyondCalendar(["a", "a", "b", "b", "c", "c"], [1, 2, 1, 2, 1, 2], [1, 2, 3, 4, 8, 9], [1, 2, 2, 4, 3, 3])), StringComparison.Ordinal);
    }

    private static string Message(Func<object> call) => Assert.Throws<ArgumentException>(call).Message;

    private static void Held(string name, WithinCorrelation told)
    {
        Oracle.Close(Value(name, "r"), told.Value);
        Oracle.Close(Value(name, "error_z"), told.ErrorOfZ!.Value, 1e-9);
        Oracle.Close(Value(name, "low"), told.Interval!.Value.Low, 1e-9);
        Oracle.Close(Value(name, "high"), told.Interval!.Value.High, 1e-9);
        Oracle.Close(Value(name, "p"), told.P!.Value, 1e-8);
        Assert.Equal((Value(name, "athletes"), Value(name, "pairs"), 1), (told.Athletes, told.Pairs, told.WithoutRepeat));
    }
}
