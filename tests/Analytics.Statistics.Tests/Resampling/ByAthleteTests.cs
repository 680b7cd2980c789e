using Analytics.Statistics.Resampling;

namespace Analytics.Statistics.Tests.Resampling;

public sealed class ByAthleteTests
{
    private static readonly string[] s_names = ["a", "b", "a", "c", "c", "c", "d", "b", "e"];
    private static readonly double[] s_values = [1, 5, 1.2, 3, 3.1, 2.9, 8, 5.5, 4];

    [Fact]
    public void A_drawn_athlete_brings_every_row()
    {
        var seen = 0;
        Bootstrap.ByAthlete(s_names, rows =>
        {
            foreach (var name in s_names.Distinct())
            {
                var own = rows.ToArray().Where(r => s_names[r] == name).CountBy(r => r).Select(p => p.Value).ToArray();
                Assert.True(own.Length == 0 || (own.Length == s_names.Count(n => n == name) && own.Distinct().Count() == 1));
            }

            seen++;
            return MeanOf(rows);
        }, new() { Resamples = 200 });
        Assert.Equal(200 + 1 + 5, seen);
    }

    [Fact]
    public void One_row_each_is_the_bootstrap_of_rows()
    {
        BootstrapOptions options = new() { Resamples = 300 };
        Assert.Equal(
            Bootstrap.OfRows(9, MeanOf, options).Statistics,
            Bootstrap.ByAthlete([.. Enumerable.Range(0, 9)], MeanOf, options).Statistics);
    }

    [Fact]
    public void Repeats_of_an_athlete_narrow_nothing()
    {
        // Each value written four times: rows would claim half the error; athletes do not.
        BootstrapOptions options = new() { Resamples = 4000 };
        double[] values = [.. Enumerable.Range(0, 48).Select(i => Math.Cos(7.0 * (i / 4)))];
        double Mean(ReadOnlySpan<int> rows)
        {
            double sum = 0;
            foreach (var row in rows) sum += values[row];
            return sum / rows.Length;
        }

        var athletes = Bootstrap.ByAthlete([.. Enumerable.Range(0, 48).Select(i => i / 4)], Mean, options);
        Assert.Equal(12, athletes.Units);
        Assert.Equal(2, athletes.StandardError / Bootstrap.OfRows(48, Mean, options).StandardError, 0.1);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void Threads_change_nothing(int threads)
    {
        BootstrapOptions options = new() { Resamples = 500 };
        Assert.Equal(
            Bootstrap.ByAthlete(s_names, MeanOf, options).Statistics,
            Bootstrap.ByAthlete(s_names, MeanOf, options with { Threads = threads }).Statistics);
    }

    [Fact]
    public void One_athlete_is_refused_in_words()
    {
        var error = Assert.Throws<ArgumentException>(() => Bootstrap.ByAthlete(["a", "a", "a"], MeanOf));
        Assert.Contains("1 athlete", error.Message, StringComparison.Ordinal);
    }

    private static double MeanOf(ReadOnlySpan<int> rows)
    {
        double sum = 0;
        foreach (var row in rows) sum += s_values[row];
        return sum / rows.Length;
    }
}
