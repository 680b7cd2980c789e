using Analytics.Statistics.Resampling;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Tests.Resampling;

public sealed class BootstrapTests
{
    private static readonly double[] s_values = [.. Enumerable.Range(0, 60).Select(i => 40 + 3 * Math.Sin(1.7 * i) + 0.05 * i * i % 4)];
    private static readonly BootstrapOptions s_few = new() { Resamples = 997, Seed = 11 };

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(8)]
    public void Threads_change_nothing(int threads)
    {
        var many = s_few with { Threads = threads };
        Assert.Equal(Bootstrap.Mean(s_values, s_few).Statistics, Bootstrap.Mean(s_values, many).Statistics);
        Assert.Equal(Bootstrap.OfValues(s_values, Median, s_few).Statistics, Bootstrap.OfValues(s_values, Median, many).Statistics);
        var (one, more) = (Bootstrap.Correlation(LawSchool.Test, LawSchool.Grade, s_few), Bootstrap.Correlation(LawSchool.Test, LawSchool.Grade, many));
        Assert.Equal(one.Statistics, more.Statistics);
        Assert.Equal(one.Interval().Limits, more.Interval().Limits);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(60)]
    [InlineData(127)]
    [InlineData(128)]
    [InlineData(129)]
    [InlineData(300)]
    public void The_fast_mean_draws_the_same_resamples_as_any_statistic(int n)
    {
        double[] values = [.. Enumerable.Range(0, n).Select(i => 100 + Math.Sqrt(i) * (i % 3 - 1) + i % 7)];
        var fast = Bootstrap.Mean(values, s_few);
        var plain = Bootstrap.OfValues(values, sample => sample.ToArray().Average(), s_few);
        for (var b = 0; b < 997; b++) Oracle.Close(plain.Statistics[b], fast.Statistics[b], 1e-13);
        for (var i = 0; i < n; i++) Oracle.Close(plain.LeaveOneOut[i], fast.LeaveOneOut[i], 1e-13);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(7)]
    [InlineData(60)]
    [InlineData(1000)]
    public void Every_unit_is_drawn_equally_often(int units)
    {
        var counts = new int[units];
        var resamples = 600_000 / units;
        Bootstrap.OfRows(units, rows =>
        {
            // The data themselves and the leave-one-out sets are asked for as well; they are not draws.
            if (rows.Length == units && !InOrder(rows))
            {
                foreach (var row in rows) counts[row]++;
            }

            return 0;
        }, new() { Resamples = resamples, Seed = 3 });

        // Chi-square of units − 1 degrees of freedom, five standard deviations wide.
        var each = counts.Average();
        var chi = counts.Sum(c => (c - each) * (c - each) / each);
        Assert.InRange(chi, Math.Max(0, units - 1 - 5 * Math.Sqrt(2.0 * units)), units - 1 + 5 * Math.Sqrt(2.0 * units) + 10);
    }

    [Fact]
    public void The_error_of_a_mean_is_the_one_theory_gives()
    {
        var mean = Bootstrap.Mean(s_values, new() { Resamples = 100_000, Seed = 2 });
        var exact = Moments.StandardDeviation(s_values) * Math.Sqrt(59.0 / 60) / Math.Sqrt(60);
        Assert.Equal(1, mean.StandardError / exact, 0.01);
        Assert.Equal(0, mean.Bias / exact, 0.013);
        Oracle.Close(exact * Math.Sqrt(60.0 / 59), mean.JackknifeStandardError!.Value);
    }

    [Fact]
    public void A_new_seed_gives_other_resamples()
        => Assert.NotEqual(Bootstrap.Mean(s_values, s_few).Statistics, Bootstrap.Mean(s_values, s_few with { Seed = 12 }).Statistics);

    [Theory]
    [InlineData(BootstrapMethod.BiasCorrectedAccelerated)]
    [InlineData(BootstrapMethod.Percentile)]
    [InlineData(BootstrapMethod.Basic)]
    [InlineData(BootstrapMethod.Normal)]
    public void Intervals_shift_and_scale_with_the_data(BootstrapMethod method)
    {
        foreach (var end in Enum.GetValues<EndPoint>())
        {
            var plain = Bootstrap.Mean(s_values, s_few).Interval(method, 0.9, end).Limits!.Value;
            var moved = Bootstrap.Mean([.. s_values.Select(v => 5 + 2.5 * v)], s_few).Interval(method, 0.9, end).Limits!.Value;
            Oracle.Close(5 + 2.5 * plain.Low, moved.Low, 1e-12);
            Oracle.Close(5 + 2.5 * plain.High, moved.High, 1e-12);
        }
    }

    [Fact]
    public void Memory_holds_the_statistics_and_nothing_else_per_resample()
    {
        double[] values = [.. s_values];
        double[] other = [.. values.Select((v, i) => v * v + i)];
        Func<int, BootstrapDistribution>[] ways =
        [
            b => Bootstrap.Mean(values, new() { Resamples = b }),
            b => Bootstrap.OfValues(values, Median, new() { Resamples = b }),
            b => Bootstrap.OfRows(60, rows => LawSchool.CorrelationOf(values, other, rows), new() { Resamples = b }),
            b => Bootstrap.Correlation(values, other, new() { Resamples = b }),
        ];
        foreach (var way in ways)
        {
            way(1000);
            var (few, many) = (Bytes(() => way(1000)), Bytes(() => way(3000)));
            Assert.Equal(2000 * 8, many - few);
        }
    }

    private static bool InOrder(ReadOnlySpan<int> rows)
    {
        for (var i = 0; i < rows.Length; i++)
        {
            if (rows[i] != i) return false;
        }

        return true;
    }

    private static long Bytes(Func<BootstrapDistribution> run)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        run();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static double Median(Span<double> sample)
    {
        sample.Sort();
        return (sample[(sample.Length - 1) / 2] + sample[sample.Length / 2]) / 2;
    }
}
