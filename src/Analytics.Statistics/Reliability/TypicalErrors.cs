using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Reliability;

/// <summary>Ways to estimate the typical error from repeats.</summary>
public static class TypicalErrors
{
    /// <summary>
    /// From trials taken in the same order by every athlete. What all athletes gain from trial to trial (learning, another day)
    /// is taken out first, so it does not count as error. For a pair of trials this is SD(differences)/√2, for a complete
    /// table √(residual mean square). Missing trials are allowed: the additive model is fitted to the values there are.
    /// </summary>
    /// <param name="table">Athletes × trials.</param>
    /// <exception cref="ArgumentException">Fewer than 2 athletes have a repeat, so nothing is left to judge error by.</exception>
    public static TypicalError FromTrials(TrialTable table)
    {
        var fit = AdditiveFit.Of(table);
        if (fit.DegreesOfFreedom < 1)
        {
            throw new ArgumentException(
                $"{fit.WithRepeat} of {table.Athletes} athletes have a repeat; at least 2 with the same two trials are needed for a typical error.", nameof(table));
        }

        return new()
        {
            Value = Math.Sqrt(fit.ResidualSquares / fit.DegreesOfFreedom),
            DegreesOfFreedom = fit.DegreesOfFreedom,
            Athletes = fit.WithRepeat,
            WithoutRepeat = table.Athletes - fit.WithRepeat,
            Method = $"{table.Trials} trials of {fit.WithRepeat} athletes, trial means taken out",
        };
    }

    /// <summary>
    /// From attempts whose order means nothing, any number an athlete: the pooled SD within athletes, df Σ(kᵢ − 1).
    /// A common gain from attempt to attempt counts as error here.
    /// </summary>
    /// <param name="attempts">One list an athlete, of any length.</param>
    /// <exception cref="ArgumentException">No athlete has two attempts.</exception>
    public static TypicalError FromAttempts(IReadOnlyList<IReadOnlyList<double>> attempts)
    {
        ArgumentNullException.ThrowIfNull(attempts);
        for (var i = 0; i < attempts.Count; i++)
        {
            if (attempts[i] is null) throw new ArgumentException($"attempts[{i}] is null; give an athlete without attempts an empty list.", nameof(attempts));
        }

        var repeated = attempts.Where(a => a.Count > 1).ToList();
        if (repeated.Count == 0)
            throw new ArgumentException($"None of {attempts.Count} athletes has 2 attempts; at least 1 such athlete is needed.", nameof(attempts));
        var df = repeated.Sum(a => a.Count - 1);
        return new()
        {
            Value = Math.Sqrt(repeated.Sum(a => (a.Count - 1) * Moments.Variance(a)) / df),
            DegreesOfFreedom = df,
            Athletes = repeated.Count,
            WithoutRepeat = attempts.Count - repeated.Count,
            Method = $"attempts of {repeated.Count} athletes, pooled within athletes",
        };
    }

    /// <summary>
    /// Root mean square of the typical errors of neighbouring trials (1–2, 2–3, …). Unlike <see cref="FromTrials"/> it leaves slow drift from trial to
    /// trial out of the error. Neighbouring pairs share a trial, so df is (n − 1)(k − 1)²/(1.5 k − 2), below (n − 1)(k − 1): the covariance
    /// of neighbouring differences is −TE² and their variance 2 TE², which gives their sample variances a correlation of 1/4.
    /// </summary>
    /// <param name="table">At least 2 athletes, every trial present.</param>
    /// <exception cref="ArgumentException">Fewer than 2 athletes, or a trial is missing.</exception>
    public static TypicalError FromNeighbours(TrialTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        if (!table.IsComplete)
            throw new ArgumentException($"{table.Athletes * table.Trials - table.Observations} of {table.Athletes * table.Trials} trials are missing; use {nameof(FromTrials)}, which allows for that.", nameof(table));
        if (table.Athletes < 2) throw new ArgumentException($"{table.Athletes} athlete; at least 2 are needed for a typical error.", nameof(table));
        var k = table.Trials;
        return new()
        {
            Value = Math.Sqrt(Enumerable.Range(0, k - 1).Average(j => Moments.Variance(table.Differences(j, j + 1))) / 2),
            DegreesOfFreedom = (table.Athletes - 1) * (k - 1.0) * (k - 1.0) / (1.5 * k - 2),
            Athletes = table.Athletes,
            Method = $"root mean square over {k - 1} neighbouring pairs of trials",
        };
    }
}
