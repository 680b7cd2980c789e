namespace Analytics.Statistics.Fitting;

/// <summary>Limits and tolerances of a fit. The defaults suit problems in double precision.</summary>
public sealed record FitOptions
{
    /// <summary>The defaults.</summary>
    public static FitOptions Default { get; } = new();

    /// <summary>Most accepted or refused steps.</summary>
    public int MaxIterations { get; init; } = 1000;

    /// <summary>Relative change of every parameter at which the fit has converged.</summary>
    public double StepTolerance { get; init; } = 1e-10;

    /// <summary>Cosine between residuals and every derivative at which the fit has converged.</summary>
    public double GradientTolerance { get; init; } = 1e-12;

    /// <summary>First damping, relative to the scaled normal equations; larger is more cautious.</summary>
    public double StartDamping { get; init; } = 0.1;

    /// <summary>Lower bounds, one per parameter (negative infinity for none); null for no bounds.</summary>
    public IReadOnlyList<double>? Lower { get; init; }

    /// <summary>Upper bounds, one per parameter (infinity for none); null for no bounds.</summary>
    public IReadOnlyList<double>? Upper { get; init; }

    /// <summary>Whether the result keeps every accepted step.</summary>
    public bool KeepIterates { get; init; }
}
