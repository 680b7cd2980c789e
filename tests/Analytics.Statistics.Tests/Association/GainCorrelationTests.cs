using Analytics.Statistics.Association.Repeated;
using static Analytics.Statistics.Tests.Association.TransferOracle;

namespace Analytics.Statistics.Tests.Association;

public sealed class GainCorrelationTests
{
    [Theory]
    [InlineData("gains", false)]
    [InlineData("gains_precise", true)]
    public void Agrees_with_least_squares_refitted_without_each_athlete(string name, bool precise)
    {
        var told = GainCorrelation.Of(Athletes, Times, X, Y, precisionX: precise ? PrecisionX : null, precisionY: precise ? PrecisionY : null);
        Oracle.Close(Value(name, "r"), told.Value, 1e-9);
        Oracle.Close(Value(name, "raw"), told.Raw, 1e-9);
        Oracle.Close(Value(name, "from_errors"), told.FromErrors!.Value, 1e-8);
        Oracle.Close(Value(name, "of_errors"), told.OfErrors!.Value, 1e-8);
        Oracle.Close(Value(name, "error_z"), told.ErrorOfZ!.Value, 1e-8);
        Oracle.Close(Value(name, "low"), told.Interval!.Value.Low, 1e-8);
        Oracle.Close(Value(name, "high"), told.Interval!.Value.High, 1e-8);
        Oracle.Close(Value(name, "p"), told.P!.Value, 1e-7);
        Oracle.Close(Value(name, "reliability_x"), told.ReliabilityX!.Value, 1e-9);
        Oracle.Close(Value(name, "reliability_y"), told.ReliabilityY!.Value, 1e-9);
        Oracle.Close(Value(name, "spread_px"), told.SpreadPX!.Value, 1e-7);
        Oracle.Close(Value(name, "spread_py"), told.SpreadPY!.Value, 1e-7);
        Oracle.Close(Value(name, "freedom"), told.ErrorFreedom, 1e-9);
        Oracle.Close(Value(name, "true_r"), told.OfTrueGains!.Value, 1e-9);
        // A07 was seen on the first two days only in x, A11 never.
        Assert.Equal((14, 1), (told.Athletes, told.TooShort));
    }

    [Fact]
    public void A_good_day_that_helps_both_tests_is_not_taken_for_gains_that_go_together()
    {
        // Gains exactly independent (four by four cells), the same form of the day in both tests.
        var (who, time, x, y) = Squad(gain: (i, _) => i / 4, other: (i, _) => i % 4, form: 1.2);
        var told = GainCorrelation.Of(who, time, x, y);
        // Coarse on purpose: the errors are almost the same wave, the gains are independent.
        Assert.True(told.OfErrors > 0.8);
        Assert.True(told.Raw > told.Value + 0.05);
        Assert.True(told.P > 0.3);
    }

    [Fact]
    public void Gains_all_the_same_are_rounding_and_no_association()
    {
        var (who, time, _, y) = Squad((_, _) => 0, (i, _) => i % 4, 1);
        // One decimal a value, the same day's effect for all: gains beyond it are 1e-16 and the like.
        double?[] x = [.. who.Select((w, i) => (double?)(0.4 + 0.01 * int.Parse(w[1..], System.Globalization.CultureInfo.InvariantCulture) + 0.1 * time[i] / 140))];
        Assert.Contains("The gains of all athletes are the same in one of the measures", Assert.Throws<GainsAlikeException>(() => GainCorrelation.Of(who, time, x, y)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_whole_squad_gains_is_no_association()
    {
        var (who, time, x, y) = Squad((i, _) => i / 4, (i, _) => i % 4, 0.4);
        var (plain, moved) = (GainCorrelation.Of(who, time, x, y), GainCorrelation.Of(who, time, [.. x.Select((v, i) => v + time[i])], [.. y.Select((v, i) => v + time[i] * time[i] / 90)]));
        // Exact in algebra; t²/90 adds up to 218 to values near 50, whose rounding the fit of the days magnifies.
        Oracle.Close(plain.Value, moved.Value, 1e-7);
        Assert.Equal(plain.P!.Value, moved.P!.Value, 1e-7);
    }

    [Fact]
    public void Gains_that_do_not_differ_by_more_than_error_are_told()
    {
        var (who, time, x, y) = Squad((_, _) => 3, (i, _) => i % 4, 1);
        var told = GainCorrelation.Of(who, time, x, y);
        Assert.False(told.SpreadIsSeen);
        Assert.Null(told.OfTrueGains);
        Assert.Null(told.AthletesNeeded(0.6));
        Assert.Contains("do not differ discernibly", told.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void With_two_days_the_errors_stay_in_and_it_is_told()
    {
        var (who, time, x, y) = Squad((i, _) => i / 4, (i, _) => i % 4, 1);
        int[] two = [.. Enumerable.Range(0, who.Length).Where(i => time[i] is 0 or 140)];
        var told = GainCorrelation.Of([.. two.Select(i => who[i])], [.. two.Select(i => time[i])], [.. two.Select(i => x[i])], [.. two.Select(i => y[i])]);
        Assert.Null(told.FromErrors);
        Assert.Equal(told.Raw, told.Value);
        Assert.Contains("not taken off", told.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Players_needed_follow_fishers_scale()
    {
        var told = GainCorrelation.Of(Athletes, Times, X, Y);
        // 3 + ((1.959964 + 1.281552)/atanh(0.6 √(0.7566220302 × 0.8930572974)))² = 3 + (3.241516/0.540497)² = 38.97, by hand.
        Assert.Equal(39, told.AthletesNeeded(0.6));
    }

    [Fact]
    public void Bad_input_is_refused_in_words()
    {
        Assert.Contains("4 or more are needed", Message(() => GainCorrelation.Of(["a", "a", "b", "b"], [0, 9, 0, 9], [1, 2, 3, 5], [1, 2, 2, 4])), StringComparison.Ordinal);
        Assert.Contains("rows are of one day", Message(() => GainCorrelation.Of(["a", "b"], [0, 0], [1, 2], [1, 2])), StringComparison.Ordinal);
        Assert.Contains("two values of one measure on one day", Message(() => GainCorrelation.Of(["a", "a", "a"], [0, 0, 9], [1, 2, 3], [1, null, 3])), StringComparison.Ordinal);
        Assert.Contains("1 for a value of the usual error", Message(() => GainCorrelation.Of(["a", "a"], [0, 9], [1, 2], [1, 2], precisionX: [1, 0])), StringComparison.Ordinal);
    }

    private static string Message(Func<object> call) => Assert.Throws<ArgumentException>(call).Message;

    // Sixteen athletes on five days; errors are fixed waves, a share of them common to both tests.
    private static (string[] Who, double[] Time, double?[] X, double?[] Y) Squad(Func<int, int, double> gain, Func<int, int, double> other, double form)
    {
        double[] days = [0, 3, 42, 84, 140];
        var cells = (from i in Enumerable.Range(0, 16) from d in Enumerable.Range(0, 5) select (i, d)).ToList();
        double Wave(int i, int d, double pace) => Math.Sin(pace * (1 + i * 5 + d) * (1 + i * 0.37));
        return (
            [.. cells.Select(c => $"P{c.i}")],
            [.. cells.Select(c => days[c.d])],
            [.. cells.Select(c => (double?)(100 + c.i + gain(c.i, c.d) * days[c.d] / 140 + form * Wave(c.i, c.d, 12.9898) + 0.2 * Wave(c.i, c.d, 78.233)))],
            [.. cells.Select(c => (double?)(50 - c.i + other(c.i, c.d) * days[c.d] / 140 + form * Wave(c.i, c.d, 12.9898) + 0.2 * Wave(c.i, c.d, 37.719)))]);
    }
}
