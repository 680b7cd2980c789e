namespace Analytics.Statistics.Fitting;

/// <summary>
/// A curve y = f(x; p) with its derivatives by the parameters. Implement it as a readonly struct:
/// the fit is compiled for that struct, so evaluation costs neither a virtual call nor memory.
/// </summary>
public interface IFitModel
{
    /// <summary>Number of parameters, from 1.</summary>
    int ParameterCount { get; }

    /// <summary>Value of the curve at one abscissa, and its derivatives.</summary>
    /// <param name="x">Abscissa.</param>
    /// <param name="parameters">Parameters, <see cref="ParameterCount"/> of them.</param>
    /// <param name="gradient">Receives df/dp, in the order of the parameters.</param>
    /// <returns>f(x; p); anything not finite says that these parameters lie outside the model.</returns>
    double Evaluate(double x, ReadOnlySpan<double> parameters, Span<double> gradient);
}
