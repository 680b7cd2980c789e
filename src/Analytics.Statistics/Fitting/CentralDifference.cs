using MathNet.Numerics.Differentiation;

namespace Analytics.Statistics.Fitting;

/// <summary>Derivative of a model by one parameter from its values at five places.</summary>
/// <param name="Value">The derivative.</param>
/// <param name="Doubt">How far two lengths of step differ.</param>
internal readonly record struct CentralDifference(double Value, double Doubt)
{
    // Shares of the parameter. Long steps miss a narrow curve, short ones lose digits: the two that agree best are believed.
    private static readonly double[] s_steps = [1.0 / (1 << 10), 1.0 / (1 << 13), 1.0 / (1 << 16), 1.0 / (1 << 19)];

    public static CentralDifference Of<TModel>(in TModel model, double x, ReadOnlySpan<double> parameters, int j)
        where TModel : struct, IFitModel
    {
        var (copy, moved, gradient) = (model, parameters.ToArray(), new double[parameters.Length]);
        var centre = moved[j];
        var scale = centre == 0 ? 1 : Math.Abs(centre);
        var slopes = s_steps.Select(step => new NumericalDerivative(5, 2) { StepType = StepType.Absolute, StepSize = step }
            .EvaluateDerivative(At, 0, 1) / scale).ToArray();
        return slopes.Zip(slopes.Skip(1), (longer, shorter) => new CentralDifference(shorter, Math.Abs(longer - shorter))).MinBy(d => d.Doubt);

        double At(double share)
        {
            moved[j] = centre + (share * scale);
            return copy.Evaluate(x, moved, gradient);
        }
    }
}
