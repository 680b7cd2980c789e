namespace Analytics.Statistics.Resampling;

/// <summary>Fills the statistics of all resamples, in blocks that any number of threads may take.</summary>
internal static class ResampleRun
{
    /// <summary>Work on one block: resample numbers from first on, as many as the span is long.</summary>
    internal delegate void Block(int first, Span<double> statistics);

    /// <summary>All statistics.</summary>
    /// <param name="options">Checked options.</param>
    /// <param name="worker">Makes the work of one thread with buffers of its own.</param>
    public static double[] Fill(BootstrapOptions options, Func<Block> worker)
    {
        var statistics = new double[options.Resamples];
        var threads = Math.Min(options.Threads, options.Resamples);
        if (threads == 1)
        {
            worker()(0, statistics);
            return statistics;
        }

        Parallel.For(0, threads, new ParallelOptions { MaxDegreeOfParallelism = threads }, t =>
        {
            var first = (int)((long)options.Resamples * t / threads);
            var end = (int)((long)options.Resamples * (t + 1) / threads);
            worker()(first, statistics.AsSpan(first, end - first));
        });
        return statistics;
    }

    /// <summary>Work for a statistic of rows grouped in units: each drawn unit brings all its rows.</summary>
    public static Block OfRows(ResampleStream stream, RowGroups groups, RowStatistic statistic)
    {
        var units = new int[stream.Draws];
        var rows = new int[stream.Draws * groups.Largest];
        return (first, statistics) =>
        {
            for (var b = 0; b < statistics.Length; b++)
            {
                stream.Fill(first + b, units);
                statistics[b] = statistic(groups.Rows(units, rows));
            }
        };
    }

    /// <summary>Work for a statistic of numbers.</summary>
    public static Block OfValues(ResampleStream stream, double[] values, SampleStatistic statistic)
    {
        var units = new int[stream.Draws];
        var sample = new double[stream.Draws];
        return (first, statistics) =>
        {
            for (var b = 0; b < statistics.Length; b++)
            {
                stream.Fill(first + b, units);
                for (var i = 0; i < units.Length; i++) sample[i] = values[units[i]];
                statistics[b] = statistic(sample);
            }
        };
    }
}
