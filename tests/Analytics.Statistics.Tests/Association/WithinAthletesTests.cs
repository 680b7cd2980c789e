using Analytics.Statistics.Association;

namespace Analytics.Statistics.Tests.Association;

public sealed class WithinAthletesTests
{
    private static readonly string[] s_who = ["a", "a", "a", "b", "b", "c", "c", "c", "d"];
    private static readonly double[] s_x = [1, 2, 3.5, 11, 12, 5, 5.5, 7, 9];
    private static readonly double[] s_y = [9, 9.8, 11, 1, 1.5, 4, 4.1, 5.5, 2];

    [Fact]
    public void Differences_between_athletes_do_not_count()
    {
        var plain = RepeatedMeasuresCorrelation.Of(s_who, s_x, s_y);
        Assert.True(plain.Value > 0.9);
        Assert.True(Correlation.Pearson(s_x, s_y).Value < 0);
        double[] moved = [.. s_y.Select((v, i) => v + 50 * (s_who[i][0] - 'a'))];
        Oracle.Close(plain.Value, RepeatedMeasuresCorrelation.Of(s_who, s_x, moved).Value, 1e-10);
    }

    [Fact]
    public void Swapping_order_of_athletes_scale_and_columns_changes_nothing()
    {
        var plain = RepeatedMeasuresCorrelation.Of(s_who, s_x, s_y);
        Oracle.Close(plain.Value, RepeatedMeasuresCorrelation.Of(s_who, s_y, s_x).Value, 1e-12);
        var back = RepeatedMeasuresCorrelation.Of([.. s_who.Reverse()], [.. s_x.Reverse().Select(v => 4 * v + 1)], [.. s_y.Reverse().Select(v => 0.1 * v)]);
        Oracle.Close(plain.Value, back.Value, 1e-12);
        Oracle.Close(plain.P, back.P, 1e-9);
        Assert.Equal((1, 3, 8, 4), (plain.WithoutRepeat, plain.Athletes, plain.Pairs, plain.DegreesOfFreedom));
        Assert.Contains("1 with one pair left out", plain.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void One_athlete_is_refused_in_words()
        => Assert.Contains("1 of 2 athletes", Assert.Throws<ArgumentException>(
            () => RepeatedMeasuresCorrelation.Of(["a", "a", "a", "b"], [1, 2, 3, 4], [1, 2, 2, 4])).Message, StringComparison.Ordinal);

    [Fact]
    public void Nothing_varying_within_athletes_is_refused()
        => Assert.Contains("x does not vary within any athlete", Assert.Throws<ArgumentException>(
            () => RepeatedMeasuresCorrelation.Of(["a", "a", "b", "b"], [1, 1, 5, 5], [1, 2, 2, 4])).Message, StringComparison.Ordinal);

    [Fact]
    public void Exact_lines_and_few_degrees_have_no_interval()
    {
        var exact = RepeatedMeasuresCorrelation.Of(["a", "a", "b", "b"], [1, 2, 1, 2], [3, 5, 0, 2]);
        Assert.Equal(1, exact.Value, 1e-12);
        Assert.Null(exact.Interval);
        var few = RepeatedMeasuresCorrelation.Of(["a", "a", "b", "b"], [1, 2, 1, 2], [3, 5, 0, 1]);
        Assert.Equal(1, few.DegreesOfFreedom);
        Assert.Null(few.Interval);
        Assert.Contains("No interval", few.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Bad_columns_are_refused()
    {
        Assert.Throws<ArgumentException>(() => RepeatedMeasuresCorrelation.Of(s_who, s_x, [1, 2]));
        Assert.Throws<ArgumentException>(() => RepeatedMeasuresCorrelation.Of(["a", "b"], s_x, s_y));
        Assert.Throws<ArgumentException>(() => RepeatedMeasuresCorrelation.Of(s_who, [double.NaN, .. s_x.Skip(1)], s_y));
    }
}
