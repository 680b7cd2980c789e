namespace Analytics.Statistics.Distributions;

/// <summary>
/// P(T ≤ t) of the noncentral t law as one integral over the estimated error, with its slopes.
/// </summary>
/// <remarks>
/// With s the estimated over the true error and u = ln s: ∫ Φ(t eᵘ − δ) g(u) du, g the law of ln s. The integrand has one peak and dies off on
/// both sides faster than any power, where the trapezoid rule gains digits exponentially; all terms are positive, so the far tail keeps its digits.
/// </remarks>
/// <param name="Probability">P(T ≤ t).</param>
/// <param name="ByT">Slope by t.</param>
/// <param name="ByNoncentrality">Slope by δ, negative.</param>
internal readonly record struct NoncentralStudentSum(double Probability, double ByT, double ByNoncentrality)
{
    // Terms below this share of the largest cannot change the last digit.
    private const double LogNegligible = -42;

    // From here on the estimated error is all but normal and the integral would lose digits, later never end.
    private const double AllButNormal = 1e10;

    /// <summary>Integrates.</summary>
    public static NoncentralStudentSum Of(double t, double df, double delta)
    {
        if (df > AllButNormal) return Normal(t, df, delta);
        var peak = Peak(t, df, delta);
        const double Near = 1e-4;
        var curvature = (Steepness(peak - Near, t, df, delta) - Steepness(peak + Near, t, df, delta)) / (2 * Near);
        // Three lengths bound the step: the width of the peak, that of the normal's rise, and that of the chi law's own scale.
        var step = Math.Min(0.12, Math.Min(0.5 / Math.Max(1, Math.Abs(delta)), 0.4 / Math.Sqrt(Math.Max(curvature, 1e-6))));
        var constant = LogConstant(df);
        var top = LogTerm(peak, t, df, delta);
        double sum = 0, byT = 0, byDelta = 0;
        foreach (var side in (ReadOnlySpan<int>)[1, -1])
        {
            for (var i = side == 1 ? 0 : -1; ; i += side)
            {
                var u = peak + i * step;
                var term = LogTerm(u, t, df, delta) - top;
                if (!(term > LogNegligible)) break;
                sum += Math.Exp(term);
                var slope = Math.Exp(LogNormalTail.LogDensity(t * Math.Exp(u) - delta) + LogLaw(u, df) - top);
                byT += slope * Math.Exp(u);
                byDelta -= slope;
            }
        }

        var scale = step * Math.Exp(top + constant);
        return new(scale * sum, scale * byT, scale * byDelta);
    }

    // s is normal about 1 − 1/(4 df) with variance 1/(2 df), so Z − t s is normal too; what is left out is of the order 1/df².
    private static NoncentralStudentSum Normal(double t, double df, double delta)
    {
        var spread = Math.Sqrt(1 + t * t / (2 * df));
        var z = (t * (1 - 1 / (4 * df)) - delta) / spread;
        var density = Math.Exp(LogNormalTail.LogDensity(z)) / spread;
        return new(NormalLaw.Cdf(z), density, -density);
    }

    private static double LogTerm(double u, double t, double df, double delta) => LogNormalTail.LogCdf(t * Math.Exp(u) - delta) + LogLaw(u, df);

    // Law of ln s without its constant, 0 at its peak; (e²ᵘ − 1)/2 as eᵘ sinh u, which keeps its digits near 0. Far below 0 it is −1/2, where sinh overflows.
    private static double LogLaw(double u, double df) => df * (u - (u < -25 ? -0.5 : Math.Exp(u) * Math.Sinh(u)));

    // Written as Stirling's formula and its remainder, so that large degrees of freedom cancel on paper and not in doubles.
    private static double LogConstant(double df)
        => df < 20
            ? df / 2 * Math.Log(df / 2) - GammaLaw.LogGamma(df / 2) + Math.Log(2) - df / 2
            : 0.5 * Math.Log(df / Math.PI) - StirlingRemainder(df / 2);

    private static double StirlingRemainder(double x)
    {
        var q = 1 / (x * x);
        return (1.0 / 12 - q * (1.0 / 360 - q * (1.0 / 1260 - q * (1.0 / 1680 - q * (1.0 / 1188 - q * 691.0 / 360360))))) / x;
    }

    private static double Steepness(double u, double t, double df, double delta)
    {
        var s = Math.Exp(u);
        return df * (1 - s * s) + t * s * LogNormalTail.Slope(t * s - delta);
    }

    // The peak lies above 0 for t > 0 and below for t < 0; it need not be exact.
    private static double Peak(double t, double df, double delta)
    {
        if (t == 0) return 0;
        double near = 0, far = Math.Sign(t);
        while (Steepness(far, t, df, delta) * far > 0 && Math.Abs(far) < 700) (near, far) = (far, 2 * far);
        for (var i = 0; i < 40; i++)
        {
            var middle = (near + far) / 2;
            if (Steepness(middle, t, df, delta) * Math.Sign(t) > 0) near = middle; else far = middle;
        }

        return (near + far) / 2;
    }
}
