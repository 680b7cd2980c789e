namespace Analytics.Statistics.Association;

/// <summary>Jackknife of a line: pseudo-values n b − (n − 1) b₍ᵢ₎, their means and standard errors [linnet1993].</summary>
/// <param name="Slope">Mean of the pseudo-values of the slope: the slope with its bias taken off.</param>
/// <param name="Intercept">The same of the intercept.</param>
/// <param name="SlopeError">Standard error of the slope.</param>
/// <param name="InterceptError">Standard error of the intercept.</param>
public sealed record LineJackknife(double Slope, double Intercept, double SlopeError, double InterceptError)
{
    internal static LineJackknife? Of(IReadOnlyList<double> x, IReadOnlyList<double> y, double slope, Func<PairSums, double> slopeOf)
    {
        var n = x.Count;
        if (n < 4) return null;
        var all = Paired.Sums(x, y);
        var intercept = all.MeanY - slope * all.MeanX;
        double[] slopes = new double[n], intercepts = new double[n];
        for (var i = 0; i < n; i++)
        {
            var left = Paired.Sums([.. x.Where((_, k) => k != i)], [.. y.Where((_, k) => k != i)]);
            var without = slopeOf(left);
            if (!double.IsFinite(without)) return null;
            slopes[i] = n * slope - (n - 1) * without;
            intercepts[i] = n * intercept - (n - 1) * (left.MeanY - without * left.MeanX);
        }

        return new(slopes.Average(), intercepts.Average(), Error(slopes), Error(intercepts));
    }

    private static double Error(double[] pseudo) => Summaries.Moments.StandardDeviation(pseudo) / Math.Sqrt(pseudo.Length);
}
