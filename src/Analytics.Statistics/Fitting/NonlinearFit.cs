namespace Analytics.Statistics.Fitting;

/// <summary>One accepted step of a fit.</summary>
/// <param name="Iteration">Number of the iteration, 0 for the start.</param>
/// <param name="Parameters">Parameters after the step.</param>
/// <param name="Rss">Residual sum of squares there.</param>
/// <param name="Damping">Damping the step was made with.</param>
public sealed record FitIterate(int Iteration, IReadOnlyList<double> Parameters, double Rss, double Damping);

/// <summary>
/// The complete result of an unweighted non-linear least-squares fit, whether it succeeded or not:
/// <see cref="Ending"/> says which. Nothing in it is NaN: what is not known is null.
/// </summary>
public sealed record NonlinearFit
{
    /// <summary>How the fit ended.</summary>
    public required FitEnding Ending { get; init; }

    /// <summary>The last parameters: the solution when <see cref="IsSolution"/>, else how far it came.</summary>
    public required IReadOnlyList<double> Parameters { get; init; }

    /// <summary>Residuals, observed less fitted, in the order of the points; empty when the fit could not start.</summary>
    public required IReadOnlyList<double> Residuals { get; init; }

    /// <summary>Residual sum of squares, in the squared unit of y; null when the fit could not start.</summary>
    public required double? Rss { get; init; }

    /// <summary>Points fitted.</summary>
    public required int N { get; init; }

    /// <summary>Points less parameters; may be 0 or negative.</summary>
    public required int DegreesOfFreedom { get; init; }

    /// <summary>(J'J)⁻¹ at the solution: the covariance for an error variance of 1. Null when there is none.</summary>
    public required SymmetricMatrix? UnscaledCovariance { get; init; }

    /// <summary>Steps tried.</summary>
    public required int Iterations { get; init; }

    /// <summary>Passes over all points.</summary>
    public required int Evaluations { get; init; }

    /// <summary>Accepted steps, the start first; empty unless asked for.</summary>
    public IReadOnlyList<FitIterate> Iterates { get; init; } = [];

    /// <summary>Whether the parameters are a least-squares solution with ordinary standard errors.</summary>
    public bool IsSolution => Ending.IsSolution();

    /// <summary>sqrt(RSS/df), in the unit of y; null without degrees of freedom.</summary>
    public double? ResidualSd => Rss is { } rss && DegreesOfFreedom > 0 ? Math.Sqrt(rss / DegreesOfFreedom) : null;

    /// <summary>RSS/df · (J'J)⁻¹; null without degrees of freedom or without a solution.</summary>
    public SymmetricMatrix? Covariance => ResidualSd is { } sd ? UnscaledCovariance?.Times(sd * sd) : null;

    /// <summary>Standard errors of the parameters, square roots of the diagonal of <see cref="Covariance"/>; null when it is.</summary>
    public IReadOnlyList<double>? StandardErrors
    {
        get
        {
            if (Covariance is not { } covariance) return null;
            var errors = new double[covariance.Size];
            for (var i = 0; i < errors.Length; i++) errors[i] = Math.Sqrt(covariance[i, i]);
            return errors;
        }
    }
}
