namespace Analytics.Statistics.Fitting;

/// <summary>How a fit ended.</summary>
public enum FitEnding
{
    /// <summary>The residuals are orthogonal to every derivative, or the last step was below the step tolerance.</summary>
    Converged,

    /// <summary>No step lowers the sum of squares any more in double precision.</summary>
    LimitOfArithmetic,

    /// <summary>The best parameters lie on a bound; ordinary standard errors do not hold there.</summary>
    OnBound,

    /// <summary>Two or more parameters cannot be told apart with these data.</summary>
    NotIdentified,

    /// <summary>The iteration limit came first.</summary>
    IterationLimit,

    /// <summary>The way down leads to where the curve is not defined.</summary>
    EdgeOfModel,

    /// <summary>The derivatives promise a lower sum of squares that no step finds: they do not belong to the curve, or the curve has a kink.</summary>
    DerivativesDisagree,

    /// <summary>The curve or its derivatives are not finite at the start values.</summary>
    StartOutsideModel,

    /// <summary>Fewer points than parameters.</summary>
    TooFewPoints,
}

/// <summary>Endings in plain words.</summary>
public static class FitEndings
{
    /// <summary>Whether the parameters are a least-squares solution with ordinary standard errors.</summary>
    /// <param name="ending">The ending.</param>
    public static bool IsSolution(this FitEnding ending) => ending is FitEnding.Converged or FitEnding.LimitOfArithmetic;

    /// <summary>The ending as a sentence for a report.</summary>
    /// <param name="ending">The ending.</param>
    public static string InWords(this FitEnding ending) => ending switch
    {
        FitEnding.Converged => "converged",
        FitEnding.LimitOfArithmetic => "converged to the limit of double precision",
        FitEnding.OnBound => "stopped on a bound; no standard errors",
        FitEnding.NotIdentified => "the data cannot tell the parameters apart",
        FitEnding.IterationLimit => "stopped at the iteration limit",
        FitEnding.EdgeOfModel => "stopped where the curve ends; the best parameters lie beyond it",
        FitEnding.DerivativesDisagree => "stopped: the derivatives promise a better fit that no step finds; check them against the curve",
        FitEnding.StartOutsideModel => "the start values lie outside the model",
        FitEnding.TooFewPoints => "fewer points than parameters",
        _ => throw new ArgumentOutOfRangeException(nameof(ending), ending, $"Unknown ending {ending}."),
    };
}
