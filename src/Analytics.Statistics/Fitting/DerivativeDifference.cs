namespace Analytics.Statistics.Fitting;

/// <summary>A derivative of a model beside the one differences give.</summary>
/// <param name="Parameter">By which parameter, from 0.</param>
/// <param name="X">Where they disagree most.</param>
/// <param name="Analytic">The model's derivative there.</param>
/// <param name="Numeric">The derivative by differences there.</param>
/// <param name="Allowed">Difference that rounding and the length of the steps can explain.</param>
public sealed record DerivativeDifference(int Parameter, double X, double Analytic, double Numeric, double Allowed)
{
    // Of the largest derivative by this parameter: far above what five points leave, far below any slip of the pen.
    private const double Share = 1e-6;

    /// <summary>Whether the two are the same as far as differences can tell.</summary>
    public bool Agrees => Math.Abs(Analytic - Numeric) <= Allowed;

    internal static DerivativeDifference Worst(IEnumerable<DerivativeDifference> ofOneParameter)
    {
        var all = ofOneParameter.ToList();
        var share = Share * all.Max(d => Math.Abs(d.Numeric));
        return all.Select(d => d with { Allowed = share + (10 * d.Allowed) }).MaxBy(d => Math.Abs(d.Analytic - d.Numeric) - d.Allowed)!;
    }
}
