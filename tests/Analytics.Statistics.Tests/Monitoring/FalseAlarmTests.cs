using Analytics.Statistics.Monitoring;

namespace Analytics.Statistics.Tests.Monitoring;

/// <summary>Every stated false-alarm rate against a table from outside or against simulation.</summary>
public sealed class FalseAlarmTests
{
    [Theory]
    // 2 P(T(m - 1) < -k/√(1 + 1/m)), R 4.2.2 pt.
    [InlineData(2, 3, 0.2254033307585166)]
    [InlineData(2, 5, 0.1419274477740554)]
    [InlineData(2, 10, 0.0888979324610792)]
    [InlineData(2, 50, 0.05329982823305415)]
    [InlineData(3, 3, 0.12168993)]
    [InlineData(3, 10, 0.018768522)]
    [InlineData(3, 50, 0.00459586)]
    public void Own_baseline_of_k_sd(double k, int m, double rate)
        => Oracle.Close(rate, FalseAlarms.OwnBaseline(k, m).PerPoint!.Value, 1e-7);

    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(10)]
    public void Own_baseline_keeps_its_rate_and_wider_rules_do_not(int m)
    {
        var gauss = new Gaussian(m);
        const int runs = 20_000;
        int own = 0, two = 0, moving = 0;
        for (var run = 0; run < runs; run++)
        {
            double[] baseline = [.. Enumerable.Range(0, m).Select(_ => 60 + 4 * gauss.Next())];
            var value = 60 + 4 * gauss.Next();
            var limits = OwnBaseline.Of(baseline);
            own += limits.Limits.Contains(value) ? 0 : 1;
            two += Math.Abs(value - limits.Mean) > 2 * limits.StandardDeviation ? 1 : 0;
            moving += IndividualsChart.FromBaseline(baseline).Limits.Contains(value) ? 0 : 1;
        }

        Near(0.05, own, runs);
        Near(FalseAlarms.OwnBaseline(2, m).PerPoint!.Value, two, runs);
        Near(FalseAlarms.MovingRangeBaseline(m).PerPoint!.Value, moving, runs);
    }

    [Fact]
    public void Between_measured_sizes_the_moving_range_rate_falls_evenly()
    {
        var rates = Enumerable.Range(3, 300).Select(m => FalseAlarms.MovingRangeBaseline(m).PerPoint!.Value).ToArray();
        for (var i = 1; i < rates.Length; i++) Assert.True(rates[i] < rates[i - 1]);
        Assert.InRange(rates[^1], 0.0027, 0.0033);
        Oracle.Close(0.0233519, FalseAlarms.MovingRangeBaseline(10).PerPoint!.Value, 1e-6);
    }

    [Theory]
    // Champ and Woodall 1987, table of exact run lengths, from memory; two decimals printed.
    [InlineData(370.40, 1)]
    [InlineData(225.44, 1, 2)]
    [InlineData(166.05, 1, 3)]
    [InlineData(152.73, 1, 4)]
    [InlineData(132.89, 1, 2, 3)]
    [InlineData(122.05, 1, 2, 4)]
    [InlineData(105.78, 1, 3, 4)]
    [InlineData(91.75, 1, 2, 3, 4)]
    public void Run_rules_together(double printed, params int[] rules)
    {
        RunRule[] all = [RunRule.OneBeyondThree, RunRule.TwoOfThreeBeyondTwo, RunRule.FourOfFiveBeyondOne, RunRule.EightOnOneSide];
        Assert.Equal(printed, RunRule.Together([.. rules.Select(r => all[r - 1])]).RunLength!.Value, 0.005);
    }

    [Fact]
    public void Runs_of_a_coin()
    {
        // Mean throws of a coin until r alike in a row, either side: 2^r - 1.
        Oracle.Close(511, RunRule.Together([RunRule.NineOnOneSide]).RunLength!.Value, 1e-10);
        Oracle.Close(255, RunRule.Together([RunRule.EightOnOneSide]).RunLength!.Value, 1e-10);
    }

    [Theory]
    // Two-sided CUSUM with k = 0.5, tables in textbooks of quality control (from memory, printed to three digits).
    [InlineData(4, 0, 168, 0.5)]
    [InlineData(5, 0, 465, 0.5)]
    [InlineData(4, 1, 8.38, 0.005)]
    [InlineData(5, 1, 10.4, 0.05)]
    [InlineData(5, 2, 4.01, 0.005)]
    public void Cusum_run_lengths(double h, double shift, double printed, double half)
        => Assert.Equal(printed, CusumRunLength.TwoSided(0.5, h, shift), half);

    [Fact]
    public void Cusum_and_ewma_run_lengths_hold_in_simulation()
    {
        var gauss = new Gaussian(9);
        const int runs = 3000;
        double cusum = 0, ewma = 0;
        for (var run = 0; run < runs; run++)
        {
            double[] values = [.. Enumerable.Range(0, 400).Select(_ => 1 + gauss.Next())];
            cusum += CusumChart.Standardised(0, 1, 0.5, 4).Points(values).First(p => p.Signals).Index + 1;
            ewma += EwmaChart.Known(0, 1, 0.2, 2.962).Points(values).First(p => p.Signals).Index + 1;
        }

        Assert.Equal(CusumRunLength.TwoSided(0.5, 4, 1), cusum / runs, 0.35);
        Assert.Equal(EwmaRunLength.Of(0.2, 2.962, 1), ewma / runs, 0.5);
    }

    [Fact]
    public void An_ewma_without_memory_is_a_chart_of_single_values()
        => Oracle.Close(370.3983473449588, EwmaRunLength.Of(1, 3), 1e-10);

    private static void Near(double rate, int seen, int runs)
        => Assert.Equal(rate, seen / (double)runs, 4 * Math.Sqrt(rate * (1 - rate) / runs));
}
