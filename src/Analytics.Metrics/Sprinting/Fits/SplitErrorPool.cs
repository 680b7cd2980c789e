namespace Analytics.Metrics.Sprinting.Fits;

/// <summary>
/// Residual error pooled over many fits of one series (same timing, same start, same model). A fit of 3 gates has one degree of
/// freedom of its own, so its interval is 12.7 standard errors wide on each side and its standard error is mostly luck; the gates,
/// however, err alike for the whole squad. Pooled SD = sqrt(sum of RSS / sum of df).
/// Use it when the fits share gates and staff; use a run's own error when it stands alone or the run is odd.
/// What the pool cannot see: a misfit that all runs share (a wrong start model) is counted as noise, and its bias stays.
/// </summary>
public sealed record SplitErrorPool
{
    private SplitErrorPool()
    {
    }

    /// <summary>Start model of the pooled fits.</summary>
    public required StartModel Start { get; init; }

    /// <summary>Response of the pooled fits.</summary>
    public required SplitResponse Response { get; init; }

    /// <summary>Fits that gave a curve and so entered.</summary>
    public required int Fits { get; init; }

    /// <summary>Sum of their degrees of freedom.</summary>
    public required int DegreesOfFreedom { get; init; }

    /// <summary>Pooled residual SD, in s (time response) or m (distance response).</summary>
    public required double ResidualSd { get; init; }

    /// <summary>Pools fits.</summary>
    /// <param name="fits">Fits of one series; those without a curve are passed over.</param>
    /// <returns>The pool; null when no fit has a curve.</returns>
    /// <exception cref="ArgumentException">Fits of more than one start model or response.</exception>
    public static SplitErrorPool? Of(IEnumerable<SplitFit> fits)
    {
        SplitFit[] fitted = [.. fits.Where(f => f.Curve is not null)];
        if (fitted.Length == 0) return null;
        var (start, response) = (fitted[0].Start, fitted[0].Response);
        if (fitted.FirstOrDefault(f => f.Start != start || f.Response != response) is { } other)
            throw new ArgumentException(
                $"One pool holds one model: the first fit is {start.InWords()}, {response}; another is {other.Start.InWords()}, {other.Response}.", nameof(fits));
        var df = fitted.Sum(f => f.DegreesOfFreedom);
        return new()
        {
            Start = start,
            Response = response,
            Fits = fitted.Length,
            DegreesOfFreedom = df,
            ResidualSd = Math.Sqrt(fitted.Sum(f => f.Numerics!.Rss!.Value) / df),
        };
    }
}
