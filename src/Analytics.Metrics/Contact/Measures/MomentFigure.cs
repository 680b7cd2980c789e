using System.Globalization;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;

namespace Analytics.Metrics.Contact;

/// <summary>
/// Puts together what a figure at a moment may be off by: the points it was read from, and the moment itself, which moves a figure by its rate of change. The interval is Student's t with Satterthwaite's degrees of
/// freedom, since judgement of the moment may rest on few repeat readings; the part of the frame interval counts as the uniform error it is.
/// </summary>
internal static class MomentFigure
{
    public static Estimate Of(LocalValue at, EventMoment moment, string method, double otherVariance = 0)
        => Of(at.Value, at.ValueVariance + otherVariance, at.Slope, at.SlopeVariance, moment, at.Samples, method);

    public static Estimate Of(double value, double ownVariance, double rate, double rateVariance, EventMoment moment, int samples, string method)
    {
        // The square of a rate of change that is itself noisy is too large by its variance.
        var byTime = Math.Sqrt(Math.Max(0, (rate * rate) - (double.IsNaN(rateVariance) ? 0 : rateVariance)));
        if (double.IsNaN(ownVariance)) return new(value, null, null, samples, method);
        double total = ownVariance + (byTime * byTime * moment.Variance), estimated = byTime * byTime * moment.EstimatedVariance;
        var error = Math.Sqrt(total);
        var df = estimated > 0 ? total * total / (estimated * estimated / moment.DegreesOfFreedom) : double.PositiveInfinity;
        double frame = Math.Sqrt(3 * byTime * byTime * moment.FrameVariance), rest = Math.Sqrt(Math.Max(0, total - (byTime * byTime * moment.FrameVariance)));
        var reach = FrameAndNormal.Reach(frame, rest, 0.95) * StudentLaw.TwoSided(0.95, df) / NormalLaw.TwoSided(0.95);
        return new(value, error, new(value - reach, value + reach), samples, string.Create(CultureInfo.InvariantCulture, $"{method}; moment known to {1000 * Math.Sqrt(moment.Variance):0.#} ms"));
    }
}
