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
}
