using System.Globalization;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Fitting;

/// <summary>
/// Whether the derivatives a model gives belong to its curve. For authors of an <see cref="IFitModel"/>: call it in a test, at
/// parameters a fit would visit. A wrong derivative seldom stops a fit; it makes it slow and its standard errors wrong.
/// </summary>
/// <param name="Derivatives">The worst disagreement of each parameter, in their order.</param>
/// <param name="Points">Abscissas compared.</param>
public sealed record JacobianCheck(IReadOnlyList<DerivativeDifference> Derivatives, int Points) : Result
{
    /// <summary>Whether every derivative agrees within what central differences can tell.</summary>
    public bool Agrees => Derivatives.All(d => d.Agrees);

    /// <summary>Compares the derivatives of a model with central differences of its curve over five points.</summary>
    /// <typeparam name="TModel">The model.</typeparam>
    /// <param name="model">The curve.</param>
    /// <param name="x">Abscissas, at least one, finite.</param>
    /// <param name="parameters">
    /// Parameters to check at, finite and inside the model by 0.2 % of each. A parameter of 0 is moved by 0.002 of its unit: where that
    /// is a long way, check at another value.
    /// </param>
    /// <exception cref="ArgumentException">Nothing to compare, or a curve or derivative that is not finite there.</exception>
    public static JacobianCheck Of<TModel>(in TModel model, ReadOnlySpan<double> x, ReadOnlySpan<double> parameters)
        where TModel : struct, IFitModel
    {
        var p = model.ParameterCount;
        if (x.Length == 0) throw new ArgumentException("There is no abscissa; at least one is needed.", nameof(x));
        FitArguments.Check(x, x, parameters, p, FitOptions.Default);
        var (gradient, found) = (new double[p], new List<DerivativeDifference>());
        foreach (var at in x)
        {
            var value = model.Evaluate(at, parameters, gradient);
            for (var j = 0; j < p; j++)
            {
                var differences = CentralDifference.Of(in model, at, parameters, j);
                if (!double.IsFinite(value + gradient[j] + differences.Value))
                    throw new ArgumentException(Say(
                        $"At x = {at} the curve is {value}, its derivative by parameter {j} {gradient[j]}, by differences {differences.Value}; check where all are finite."), nameof(parameters));
                found.Add(new(j, at, gradient[j], differences.Value, differences.Doubt));
            }
        }
        return new([.. found.GroupBy(d => d.Parameter).Select(DerivativeDifference.Worst)], x.Length);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Derivatives of a model", "central differences over five points",
    [
        .. Derivatives.Select(d => new ResultLine(Say($"by parameter {d.Parameter + 1}"), d.Analytic)
        {
            Note = Say($"differences give {d.Numeric:0.########E+0} at x = {d.X}; {(d.Agrees ? "agrees" : "does not agree")}"),
        }),
    ])
    {
        Basis = Say($"{Points} abscissas; of each parameter the worst is shown"),
        Remarks = Agrees ? [] : ["The fit would follow wrong directions and state wrong standard errors: mend the derivatives marked above."],
    };

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
