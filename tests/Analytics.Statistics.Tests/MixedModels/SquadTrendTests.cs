using Analytics.Statistics.MixedModels;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Tests.MixedModels;

public sealed class SquadTrendTests
{
    // Balanced: 18 subjects, 10 days; a day's mean is the plain mean, and the line that of the slope model (closed form, section 9 of the accuracy table).
    [Fact]
    public void Balanced_data_give_plain_means_and_the_slope_of_the_mixed_model()
    {
        var trend = SquadTrend.Of(Sleep(), "reaction time");
        Assert.True(trend.HasRandomSlopes);
        Assert.Empty(trend.Remarks);
        Assert.Equal((18, 180, 10, 10), (trend.Athletes, trend.Rows, trend.Squad.Count, trend.Groups.Count));
        foreach (var mean in trend.Squad)
        {
            Oracle.Close(Moments.Mean([.. Sleep().Where(r => r.Day == mean.Day).Select(r => r.Value)]), mean.Mean.Value, 1e-9);
            Assert.Equal(18, mean.Athletes);
            Assert.True(mean.Mean.Interval.Contains(mean.Mean.Value));
        }

        Assert.Null(trend.Squad[0].SinceFirst);
        Oracle.Close(trend.Squad[9].Mean.Value - trend.Squad[0].Mean.Value, trend.Squad[9].SinceFirst!.Value, 1e-9);
        var slope = Assert.Single(trend.Slopes);
        Oracle.Close(10.46728595959596, slope.PerDay.Value, 1e-9);
        Oracle.Close(1.545788896294727, slope.PerDay.StandardError, 1e-8);
        Oracle.Close(17, slope.PerDay.DegreesOfFreedom, 1e-8);
    }

    // Two groups, the weaker half absent on the last day: a plain mean would rise by 10 where nobody has moved by more than error.
    [Fact]
    public void Who_is_missing_does_not_pass_for_a_change()
    {
        double[] error = [0.3, -0.2, 0.1, -0.4, 0.2, 0.0, -0.1, 0.4, -0.3, 0.05];
        var rows = Enumerable.Range(0, 12).SelectMany(i => Enumerable.Range(0, 3)
            .Where(day => day < 2 || i >= 6)
            .Select(day => new TrendRow($"a{i}", i % 2 == 0 ? "line" : "back", day, (i < 6 ? 90 : 110) + i + error[(i + (3 * day)) % 10]))).ToList();
        var trend = SquadTrend.Of(rows);
        var last = trend.Squad[^1];
        Assert.Equal(6, last.Athletes);
        Assert.InRange(last.SinceFirst!.Value, -0.5, 0.5);
        Assert.True(rows.Where(r => r.Day == 2).Average(r => r.Value) - rows.Where(r => r.Day == 0).Average(r => r.Value) > 9);
        Assert.Equal([null, "back", "line"], trend.Slopes.Select(s => s.Group));
        Assert.Equal(6, trend.Groups.Count);
        Assert.False(trend.HasRandomSlopes); // 6 athletes with 3 days
    }

    // The design spelled out by hand with the same rows is held against lme4 elsewhere; this holds the helper against that design.
    [Fact]
    public void Group_lines_are_those_of_the_model_with_interaction()
    {
        var rows = Oracle.Rows("mixed-unbalanced.csv").Select(r => new TrendRow(r[0], r[1], Oracle.Number(r[2]), Oracle.Number(r[4]))).ToList();
        var trend = SquadTrend.Of(rows, "jump", 0.9);
        var model = MixedExamples.Unbalanced().RandomSlope("day").Fit().Require();
        var line = model.FixedEffects.Single(f => f.Name == "day");
        if (!trend.HasRandomSlopes) line = MixedExamples.Unbalanced().Fit().Require().FixedEffects.Single(f => f.Name == "day");
        var ours = trend.Slopes.Single(s => s.Group == "line").PerDay;
        Oracle.Close(line.Value, ours.Value, 1e-8);
        Oracle.Close(line.StandardError, ours.StandardError, 1e-7);
        Assert.Equal(0.9, ours.Interval.Level);
        Assert.Contains("Trend of jump", trend.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_to_fit_is_said_and_bad_rows_are_refused()
    {
        var once = SquadTrend.Of([new("a", "x", 0, 1), new("b", "x", 0, 2), new("c", "y", 0, 4)]);
        Assert.Empty(once.Squad);
        Assert.Empty(once.Slopes);
        Assert.Contains(once.Remarks, r => r.Contains("No athlete has more than 1 row", StringComparison.Ordinal));
        Assert.Contains("no model could be fitted", once.ToString(), StringComparison.Ordinal);
        var moved = Assert.Throws<ArgumentException>(() => SquadTrend.Of([new("a", "x", 0, 1), new("a", "y", 1, 2)]));
        Assert.Contains("a is in 2 groups (x, y)", moved.Message, StringComparison.Ordinal);
        Assert.Contains("[1]", Assert.Throws<ArgumentException>(() => SquadTrend.Of([new("a", "x", 0, 1), new("a", "x", double.NaN, 2)])).Message, StringComparison.Ordinal);
        Assert.Contains("[0]", Assert.Throws<ArgumentException>(() => SquadTrend.Of([new("a", "x", 0, double.PositiveInfinity)])).Message, StringComparison.Ordinal);
    }

    private static List<TrendRow> Sleep()
        => [.. Oracle.Rows("mixed-sleepstudy.csv").Select(r => new TrendRow(r[2], "all", Oracle.Number(r[1]), Oracle.Number(r[0])))];
}
