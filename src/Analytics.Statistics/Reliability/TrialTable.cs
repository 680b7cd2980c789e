namespace Analytics.Statistics.Reliability;

/// <summary>Repeated trials of several athletes: one row an athlete, one column a trial, gaps allowed.</summary>
public sealed class TrialTable
{
    private readonly double?[][] _rows;

    private TrialTable(double?[][] rows, int trials)
    {
        _rows = rows;
        Trials = trials;
        Observations = rows.Sum(r => r.Count(v => v.HasValue));
    }

    /// <summary>Number of athletes (rows), those without any value included.</summary>
    public int Athletes => _rows.Length;

    /// <summary>Number of trials (columns).</summary>
    public int Trials { get; }

    /// <summary>Values present.</summary>
    public int Observations { get; }

    /// <summary>Whether no value is missing.</summary>
    public bool IsComplete => Observations == Athletes * Trials;

    /// <summary>The value of an athlete in a trial, both from 0; null when missing.</summary>
    /// <param name="athlete">Row, from 0.</param>
    /// <param name="trial">Column, from 0.</param>
    public double? this[int athlete, int trial] => _rows[athlete][trial];

    /// <summary>A table from rows of equal length.</summary>
    /// <param name="rows">One row an athlete; null marks a missing trial. At least one row of at least two columns.</param>
    /// <exception cref="ArgumentException">No rows, rows of different lengths, or a value that is not finite.</exception>
    public static TrialTable FromRows(IReadOnlyList<IReadOnlyList<double?>> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        if (rows.Count == 0) throw new ArgumentException("The table has no rows; at least 1 athlete is needed.", nameof(rows));
        var trials = rows[0]?.Count ?? throw new ArgumentException("Row 0 is null; write a row of nulls for an athlete without any trial.", nameof(rows));
        if (trials < 2) throw new ArgumentException($"The table has {trials} trial columns; at least 2 are needed.", nameof(rows));
        for (var i = 0; i < rows.Count; i++)
        {
            if (rows[i] is null) throw new ArgumentException($"Row {i} is null; write a row of nulls for an athlete without any trial.", nameof(rows));
            if (rows[i].Count != trials)
                throw new ArgumentException($"Row {i} has {rows[i].Count} trials where row 0 has {trials}; write null for a missing trial.", nameof(rows));
            for (var j = 0; j < trials; j++)
            {
                if (rows[i][j] is { } v && !double.IsFinite(v))
                    throw new ArgumentException(FormattableString.Invariant($"Row {i}, trial {j} is {v}; write null for a missing trial."), nameof(rows));
                if (rows[i][j] is { } size) Require.NotTooLarge(size, $"Row {i}, trial {j}", nameof(rows));
            }
        }

        return new([.. rows.Select(r => r.ToArray())], trials);
    }

    /// <summary>A table of two trials.</summary>
    /// <param name="first">First trial of each athlete; null when missing.</param>
    /// <param name="second">Second trial, same athletes in the same order.</param>
    public static TrialTable FromPairs(IReadOnlyList<double?> first, IReadOnlyList<double?> second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Count != second.Count)
            throw new ArgumentException($"{first.Count} first trials but {second.Count} second trials; write null for a missing one.", nameof(second));
        return FromRows([.. first.Zip(second, (a, b) => (IReadOnlyList<double?>)[a, b])]);
    }

    /// <summary>The same table with every value replaced, gaps kept.</summary>
    /// <param name="map">Function of a value; must give a finite number.</param>
    public TrialTable Select(Func<double, double> map)
    {
        ArgumentNullException.ThrowIfNull(map);
        return FromRows([.. _rows.Select(r => (IReadOnlyList<double?>)[.. r.Select(v => v is { } x ? map(x) : (double?)null)])]);
    }

    /// <summary>Only the athletes with every trial; null when there is none.</summary>
    public TrialTable? CompleteRows()
    {
        var complete = _rows.Where(r => r.All(v => v.HasValue)).ToArray();
        return complete.Length == 0 ? null : new(complete, Trials);
    }

    /// <summary>Second minus first trial of every athlete who did both.</summary>
    /// <param name="first">Column, from 0.</param>
    /// <param name="second">Column, from 0.</param>
    public IReadOnlyList<double> Differences(int first, int second)
        => [.. _rows.Where(r => r[first].HasValue && r[second].HasValue).Select(r => r[second]!.Value - r[first]!.Value)];
}
