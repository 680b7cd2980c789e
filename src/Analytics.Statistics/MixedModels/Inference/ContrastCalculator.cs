using Analytics.Statistics.Distributions;
using Analytics.Statistics.MixedModels.Criterion;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>Standard errors and degrees of freedom of weighted sums of the fixed effects.</summary>
internal sealed class ContrastCalculator(FitState state, double[] fixedEffects)
{
    private readonly Lazy<VarianceInformation> _information = new(() => new VarianceInformation(state));
    private readonly Lazy<KenwardRoger> _kenwardRoger = new(() => new KenwardRoger(state));

    public VarianceInformation Information => _information.Value;

    public FixedEffect Of(string name, IReadOnlyList<double> weights, DegreesOfFreedomMethod method, double level)
    {
        var white = state.White(weights);
        var value = 0.0;
        for (var j = 0; j < weights.Count; j++) value += weights[j] * fixedEffects[j];
        var (variance, df) = method == DegreesOfFreedomMethod.KenwardRoger ? _kenwardRoger.Value.Of(white) : (Variance(white), Satterthwaite(white));
        var se = state.Scale * Math.Sqrt(variance);
        var t = value / se;
        return new(name, value, se, df, t, Math.Min(1, 2 * StudentLaw.Cdf(-Math.Abs(t), df)), Around(value, se, df, level), method);
    }

    public static Interval Around(double value, double se, double df, double level)
    {
        var reach = StudentLaw.TwoSided(level, df) * se;
        return new(value - reach, value + reach, level);
    }

    private double Variance(double[] white) => state.Variance * Dot(white, white);

    // df = 2 v²/(g'Cg), C = 2 H⁻¹, with v the variance of the contrast and g its gradient by the variance parameters.
    private double Satterthwaite(double[] white)
    {
        var (variance, count) = (Variance(white), state.Map.Count);
        var bySlope = state.Derivatives.Slopes.Select(m => state.Variance * Form(m, white)).ToArray();
        var gradient = new double[count + 1];
        for (var i = 0; i < count; i++) gradient[i] = Dot(Information.Jacobian[i], bySlope);
        gradient[count] = variance;
        return variance * variance / Information.Form(gradient);
    }

    internal static double Form(double[] m, double[] x)
    {
        var sum = 0.0;
        for (var i = 0; i < x.Length; i++)
        {
            var inner = 0.0;
            for (var j = 0; j < x.Length; j++) inner += m[(i * x.Length) + j] * x[j];
            sum += x[i] * inner;
        }

        return sum;
    }

    internal static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
