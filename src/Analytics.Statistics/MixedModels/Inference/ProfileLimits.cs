using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>
/// Limits of a profile-likelihood interval: where the criterion, all other parameters at their best, has risen by the chi-square quantile
/// with 1 df. The root of the rise is nearly straight, so a bracketed secant search needs few steps.
/// </summary>
internal static class ProfileLimits
{
    /// <param name="criterion">The best criterion for a held value.</param>
    /// <param name="best">The best of all.</param>
    /// <param name="estimate">Where that is.</param>
    /// <param name="spread">A first guess of the distance to a limit, above 0.</param>
    /// <param name="range">Values the parameter can have; a limit that is not reached inside is the end of the range.</param>
    /// <param name="level">Coverage.</param>
    public static Interval Of(Func<double, double> criterion, double best, double estimate, double spread, (double Low, double High) range, double level)
    {
        var height = NormalLaw.TwoSided(level);
        double Miss(double value) => Math.Sqrt(Math.Max(0, criterion(value) - best)) - height;
        return new(Limit(Miss, estimate, -spread, range.Low, height), Limit(Miss, estimate, spread, range.High, height), level);
    }

    private static double Limit(Func<double, double> miss, double estimate, double step, double end, double height)
    {
        var (inside, insideMiss) = (estimate, -height);
        for (var tries = 0; tries < 200; tries++, step *= 2)
        {
            var outside = inside + step;
            var atEnd = step < 0 ? outside <= end : outside >= end;
            if (atEnd) outside = end;
            var outsideMiss = miss(outside);
            if (outsideMiss >= 0) return Root(miss, inside, insideMiss, outside, outsideMiss);
            if (atEnd) return end;
            (inside, insideMiss) = (outside, outsideMiss);
        }

        return step < 0 ? double.NegativeInfinity : double.PositiveInfinity;
    }

    // Illinois: a secant that halves the weight of an end that stays.
    private static double Root(Func<double, double> f, double a, double fa, double b, double fb)
    {
        if (double.IsInfinity(fb))
        {
            // The end of the range itself is impossible: close in on it from inside.
            for (var i = 0; i < 100 && double.IsInfinity(fb); i++)
            {
                var middle = (a + b) / 2;
                var value = f(middle);
                if (value >= 0) (b, fb) = (middle, value);
                else (a, fa) = (middle, value);
            }
        }

        for (var step = 0; step < 100; step++)
        {
            var c = b - (fb * (b - a) / (fb - fa));
            if (!double.IsFinite(c) || Math.Abs(c - b) < 1e-11 * (Math.Abs(b) + Math.Abs(b - a))) return double.IsFinite(c) ? c : b;
            var fc = f(c);
            if (fc == 0) return c;
            if (Math.Sign(fc) != Math.Sign(fb)) (a, fa) = (b, fb);
            else fa /= 2;
            (b, fb) = (c, fc);
        }

        return b;
    }
}
