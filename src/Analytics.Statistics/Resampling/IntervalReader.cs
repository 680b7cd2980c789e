using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Resampling;

/// <summary>Reads intervals from resampled statistics.</summary>
internal static class IntervalReader
{
    // Our choices: a limit on fewer resamples than this is noisy; more undefined resamples than this share leave no interval.
    private const double FewInTail = 10;
    private const double MostUndefined = 0.01;

    public static BootstrapInterval Read(
        BootstrapDistribution from, BootstrapMethod method, double level, EndPoint endPoint, Acceleration source)
    {
        var none = new BootstrapInterval { Distribution = from, Method = method, Level = level, EndPoint = endPoint, AccelerationSource = source };
        var all = from.Statistics.Count + from.Undefined;
        if (from.Undefined > MostUndefined * all)
        {
            return none with { Explanation = FormattableString.Invariant(
                $"No interval: the statistic does not exist in {from.Undefined} of {all} resamples, and those left over are not a fair sample. Use more data, or a statistic that always exists.") };
        }

        if (from.Equal == from.Statistics.Count)
        {
            return none with { Explanation = FormattableString.Invariant(
                $"No interval: all {all} resamples give the estimate itself. The data do not vary, so resampling cannot say how far it may be off.") };
        }

        var (low, high) = ((1 - level) / 2, (1 + level) / 2);
        if (method == BootstrapMethod.Normal)
        {
            var (centre, reach) = (from.Estimate - from.Bias, NormalLaw.Quantile(high) * from.StandardError);
            return none with { Limits = new Interval(centre - reach, centre + reach, level), Explanation = Remark(from, 0.5, 0.5) };
        }

        double? acceleration = null;
        if (method == BootstrapMethod.BiasCorrectedAccelerated)
        {
            acceleration = from.AccelerationBy(source);
            var words = Move(from, acceleration, ref low, ref high);
            if (words.Length > 0) return none with { Acceleration = acceleration, Explanation = "No BCa interval: " + words };
        }

        var (a, b) = ResampleQuantiles.Of(from, low, high, endPoint);
        return none with
        {
            Limits = method == BootstrapMethod.Basic ? new Interval(2 * from.Estimate - b, 2 * from.Estimate - a, level) : new Interval(a, b, level),
            LowerShare = low,
            UpperShare = high,
            Acceleration = acceleration,
            Explanation = Remark(from, low, high),
        };
    }

    private static string Move(BootstrapDistribution from, double? acceleration, ref double low, ref double high)
    {
        if (from.BiasCorrection is not { } z0)
        {
            return $"all resamples lie {(from.Below == 0 ? "at or above" : "at or below")} the estimate, so the bias correction is infinite. "
                + "Such a statistic (a maximum, for example) cannot be resampled this way.";
        }

        if (acceleration is not { } a) return "leaving out a unit changes nothing, or leaves a statistic that does not exist, so there is no acceleration. Use another method.";
        var (below, above) = (Moved(z0, a, NormalLaw.Quantile(low)), Moved(z0, a, NormalLaw.Quantile(high)));
        if (below is not { } first || above is not { } last || !(first > 0 && last < 1 && first < last))
            return FormattableString.Invariant($"bias correction {z0:0.###} and acceleration {a:0.###} are too large for this level. Use a lower level or another method.");
        (low, high) = (first, last);
        return string.Empty;
    }

    private static double? Moved(double z0, double a, double z)
    {
        var rest = 1 - a * (z0 + z);
        return rest > 0 ? NormalLaw.Cdf(z0 + (z0 + z) / rest) : null;
    }

    private static string Remark(BootstrapDistribution from, double low, double high)
    {
        var tail = Math.Min(low, 1 - high) * from.Statistics.Count;
        var noisy = tail < FewInTail
            ? FormattableString.Invariant($"A limit rests on the outermost {Math.Max(1, Math.Ceiling(tail))} of {from.Statistics.Count} resamples and is noisy; draw more. ")
            : string.Empty;
        var undefined = from.Undefined > 0
            ? FormattableString.Invariant($"{from.Undefined} resamples in which the statistic does not exist were left out.")
            : string.Empty;
        return (noisy + undefined).TrimEnd();
    }
}
