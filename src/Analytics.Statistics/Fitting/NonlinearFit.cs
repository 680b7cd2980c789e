using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Fitting;

/// <summary>
/// The complete result of an unweighted non-linear least-squares fit, whether it succeeded or not:
/// <see cref="Ending"/> says which. Nothing in it is NaN: what is not known is null.
/// </summary>
public sealed record NonlinearFit : Result
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

    /// <summary>
    /// Condition of the Jacobian at the solution, its columns brought to length 1: 1 when the parameters do not disturb each other; of the
    /// 16 digits of the arithmetic log10 of it are lost. Null without <see cref="UnscaledCovariance"/>. (Frobenius norms, divided by the number of parameters.)
    /// </summary>
    public required double? Condition { get; init; }

    /// <summary>Steps tried.</summary>
    public required int Iterations { get; init; }

    /// <summary>Passes over all points.</summary>
    public required int Evaluations { get; init; }

    /// <summary>Accepted steps, the start first; empty unless asked for.</summary>
    public IReadOnlyList<FitIterate> Iterates { get; init; } = [];

    /// <summary>Names of the parameters for print; empty numbers them. Set with a <c>with</c> expression.</summary>
    public IReadOnlyList<string> ParameterNames { get; init; } = [];

    /// <summary>Whether half of the digits are lost because the parameters nearly replace each other.</summary>
    public bool IsIllConditioned => Condition > 1e8;

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

    /// <summary>A parameter with its doubt: Student's t interval with <see cref="DegreesOfFreedom"/>; no doubt where there are no standard errors.</summary>
    /// <param name="parameter">Which, from 0.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <remarks>The interval takes the curve as straight over its width (Wald); it is rough where parameters are strongly correlated.</remarks>
    public Estimate Parameter(int parameter, double level = 0.95)
    {
        Require.Share(level, nameof(level));
        if ((uint)parameter >= (uint)Parameters.Count)
            throw new ArgumentOutOfRangeException(nameof(parameter), parameter, $"There is no parameter {parameter}; the model has {Parameters.Count}, counted from 0.");
        var value = Parameters[parameter];
        if (StandardErrors is not { } errors) return new(value, null, null, N, "least squares, no error known");
        var reach = StudentLaw.TwoSided(level, DegreesOfFreedom) * errors[parameter];
        return new(value, errors[parameter], new Interval(value - reach, value + reach, level), N, "least squares with Student t interval");
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => FitSheet.Of(this);
}
