using System.Globalization;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;

namespace Analytics.Metrics.Contact;

/// <summary>
/// Puts together what a figure at a moment may be off by: the points it was read from, and the moment itself, which moves a figure by its rate of change. The interval is Student's t with Satterthwaite's degrees of
/// freedom, since judgement of the moment may rest on few repeat readings.
/// </summary>
internal static class MomentFigure
{
    public static Estimate Of(LocalValue at, EventMoment moment, string method, double otherVariance = 0)
        => Of(at.Value, at.ValueVariance + otherVariance, at.Slope, moment, at.Samples, method);

    public static Estimate Of(double value, double ownVariance, double byTime, EventMoment moment, int samples, string method)
    {
        if (double.IsNaN(ownVariance)) return new(value, null, null, samples, method);
        double total = ownVariance + (byTime * byTime * moment.Variance), estimated = byTime * byTime * moment.EstimatedVariance;
        var error = Math.Sqrt(total);
        var df = estimated > 0 ? total * total / (estimated * estimated / moment.DegreesOfFreedom) : double.PositiveInfinity;
        var reach = StudentLaw.TwoSided(0.95, df) * error;
        return new(value, error, new(value - reach, value + reach), samples, string.Create(CultureInfo.InvariantCulture, $"{method}; moment known to {1000 * Math.Sqrt(moment.Variance):0.#} ms"));
    }
}
