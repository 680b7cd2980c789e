using System.Globalization;

namespace Analytics.Statistics.Special;

/// <summary>
/// Principal branch W0 of the Lambert function, the w ≥ -1 with w·exp(w) = x.
/// Inverts curves of the form u - 1 + exp(-u) = d, such as distance against time of an exponential approach to top speed.
/// Source: [corless1996]; series about the branch point by reversion of its equation.
/// </summary>
public static class LambertW
{
    // e = EHigh + ELow to about 32 digits, so that 1 + e·x keeps its digits next to the branch point x = -1/e.
    private const double EHigh = Math.E;
    private const double ELow = 1.4456468917292502e-16;

    // Below this s the series below is good to double precision without any call of exp.
    private const double SeriesOnly = 0.7;

    /// <summary>W0(x).</summary>
    /// <param name="x">At least -1/e = -0.36787944117144233; infinity is not allowed.</param>
    /// <returns>W0(x), relative error near 1e-15; next to the branch point limited by the spacing of doubles in x.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below -1/e, infinite or not a number.</exception>
    public static double Principal(double x)
    {
        if (!double.IsFinite(x)) throw OutOfRange(x);
        if (x == 0) return x;
        if (x > Math.E) return NewtonOnLogarithms(x);
        if (x > -0.2) return Halley(x);

        var aboveBranchPoint = Math.FusedMultiplyAdd(EHigh, x, 1) + (ELow * x);
        if (aboveBranchPoint < 0)
            return aboveBranchPoint > -1e-16 ? -1 : throw OutOfRange(x); // the double nearest to -1/e may lie just outside
        return OnePlusPrincipal(-Log1P(-aboveBranchPoint)) - 1;
    }

    /// <summary>
    /// q = 1 + W0(-exp(-1 - d)), the root in [0, 1) of -q - ln(1 - q) = d, without the cancellation of the plain formula at small d.
    /// </summary>
    /// <param name="d">0 or more; infinity gives 1.</param>
    /// <returns>q, relative error near 1e-15 for every d.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not a number.</exception>
    public static double OnePlusPrincipal(double d)
    {
        if (!(d >= 0))
            throw new ArgumentOutOfRangeException(nameof(d), d, string.Create(CultureInfo.InvariantCulture, $"d must be 0 or more; got {d}."));
        if (d > 40) return 1; // exp(-41) is below half a unit in the last place of 1

        double u;
        if (d < 2)
        {
            var s = Math.Sqrt(2 * d);
            var q = BranchSeries(s);
            if (s < SeriesOnly) return q;
            u = d + q;
        }
        else
        {
            var z = Math.Exp(-1 - d);
            u = 1 + d - (z * (1 + (z * (1 + (z * (1.5 + (z * (8.0 / 3))))))));
        }

        // Halley on u - 1 + exp(-u) = d: the error is cubed, so a step below 1e-6 leaves nothing to gain.
        while (true)
        {
            var fall = Math.Exp(-u);
            var slope = 1 - fall;
            var miss = u - slope - d;
            var step = miss * slope / ((slope * slope) - (0.5 * miss * fall));
            u -= step;
            if (Math.Abs(step) < 1e-6 * u)
            {
                // exp(-u) at the corrected u, without a second call: exp(step) to third order.
                return 1 - (fall * (1 + (step * (1 + (step * (0.5 + (step / 6)))))));
            }
        }
    }

    // q = s - s²/3 + s³/36 + ... in s = sqrt(2 d), from q q' = s (1 - q); exact fractions rounded once, highest power first. Converges for s < 3.54.
    private static ReadOnlySpan<double> Branch =>
    [
        1.2822077905614429e-12, 3.239317851416903e-12, -1.5008349408791911e-12, -5.717312238897994e-11,
        -2.921357345635569e-10, -7.32986413160022e-10, 5.159887341078076e-10, 5221.0 / 354648294000,
        163879.0 / 2172751257600, 281.0 / 1515591000, -571.0 / 2351462400, -1.0 / 204120,
        -139.0 / 5443200, -1.0 / 17010, 1.0 / 4320, 1.0 / 270, 1.0 / 36, -1.0 / 3, 1,
    ];

    private static double BranchSeries(double s)
    {
        var sum = 0.0;
        foreach (var coefficient in Branch) sum = Math.FusedMultiplyAdd(sum, s, coefficient);
        return sum * s;
    }

    // Below e: Halley on w - x exp(-w) = 0.
    private static double Halley(double x)
    {
        var w = x < 0 ? x * (1 - x) : Math.Log(1 + (x / (1 + (0.5 * x))));
        while (true)
        {
            var miss = w - (x * Math.Exp(-w));
            var step = miss / (w + 1 - ((w + 2) * miss / (2 * (w + 1))));
            w -= step;
            if (Math.Abs(step) <= 1e-6 * Math.Abs(w)) return w;
        }
    }

    // From e on: Newton on w + ln w = ln x, which keeps its digits and cannot overflow.
    private static double NewtonOnLogarithms(double x)
    {
        var target = Math.Log(x);
        var w = target - Math.Log(target) + (Math.Log(target) / target);
        while (true)
        {
            var step = (w + Math.Log(w) - target) / (1 + (1 / w));
            w -= step;
            if (Math.Abs(step) <= 1e-9 * w) return w;
        }
    }

    // ln(1 + x) with full relative precision for small x (Kahan's correction).
    private static double Log1P(double x)
    {
        var shifted = 1 + x;
        return shifted == 1 ? x : Math.Log(shifted) * (x / (shifted - 1));
    }

    private static ArgumentOutOfRangeException OutOfRange(double x)
        => new(nameof(x), x, string.Create(CultureInfo.InvariantCulture, $"x must be finite and at least -1/e = -0.36787944117144233; got {x}."));
}
