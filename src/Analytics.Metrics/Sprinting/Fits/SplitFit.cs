using Analytics.Metrics.Trials;
using Analytics.Statistics.Fitting;

namespace Analytics.Metrics.Sprinting.Fits;

/// <summary>How the fit of a run ended.</summary>
public enum SplitFitState
{
    /// <summary>There is a curve.</summary>
    Fitted,

    /// <summary>Fewer gates than the model needs.</summary>
    TooFewGates,

    /// <summary>Distances or times do not rise from gate to gate, or are not above 0.</summary>
    BadSplits,

    /// <summary>The unseen run-in came out as nothing: the still-start model says the same with one term less.</summary>
    NoRunInSeen,

    /// <summary>The splits do not look like a run that speeds up towards a top speed.</summary>
    NoCurve,
}

/// <summary>
/// The complete result of fitting the splits of one run: unweighted least squares, one datum per gate; the start is not a datum.
/// A run that cannot be fitted is a result too: <see cref="Curve"/> is null and <see cref="Explanation"/> says why.
/// </summary>
public sealed record SplitFit
{
    /// <summary>What was assumed about the start.</summary>
    public required StartModel Start { get; init; }

    /// <summary>Which number carries the error.</summary>
    public required SplitResponse Response { get; init; }

    /// <summary>The splits fitted.</summary>
    public required IReadOnlyList<Split> Splits { get; init; }

    /// <summary>How it ended.</summary>
    public required SplitFitState State { get; init; }

    /// <summary>The ending in one sentence, for example <c>2 gates: the still start model needs 3</c>.</summary>
    public required string Explanation { get; init; }

    /// <summary>The fitted curve with its errors and predictions; null unless <see cref="State"/> is <see cref="SplitFitState.Fitted"/>.</summary>
    public SprintCurve? Curve { get; init; }

    /// <summary>What the numerical fit gave, residuals included (s, or m for distance response); null when it was not started.</summary>
    public NonlinearFit? Numerics { get; init; }

    /// <summary>Gates.</summary>
    public int N => Splits.Count;

    /// <summary>Gates less parameters; 0 without a fit.</summary>
    public int DegreesOfFreedom => Numerics?.DegreesOfFreedom ?? 0;

    /// <summary>The same fit with its errors from a pool of fits (see <see cref="SplitErrorPool"/>).</summary>
    /// <param name="pool">A pool of the same start model and response.</param>
    /// <exception cref="ArgumentException">A pool of another model or response.</exception>
    public SplitFit With(SplitErrorPool pool)
    {
        ArgumentNullException.ThrowIfNull(pool);
        if (pool.Start != Start || pool.Response != Response)
            throw new ArgumentException(
                $"The pool is of {pool.Start.InWords()} fits with {pool.Response} response; this fit is {Start.InWords()}, {Response}.", nameof(pool));
        return this with { Curve = Curve?.With(pool) };
    }
}
