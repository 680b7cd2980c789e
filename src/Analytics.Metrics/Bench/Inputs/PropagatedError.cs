using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;

namespace Analytics.Metrics.Bench.Inputs;

/// <summary>
/// The error a metric gets from the errors of its inputs, by Monte Carlo: every input of a player's day comes out otherwise by its typical error between days, and
/// the formula is asked again [jcgm101].
/// </summary>
/// <param name="ByThemselves">Typical error of the metric when inputs err by themselves, in its unit; null when no error of an input is known.</param>
/// <param name="ByThemselvesInterval">Its interval, from how well the inputs' errors are known.</param>
/// <param name="Together">The same when the inputs' errors go together as they did on the retest days; null without enough retests of two inputs.</param>
/// <param name="Inputs">The inputs the formula uses, largest part first.</param>
/// <param name="TakenAsExact">Inputs it uses whose error is not known or not carried.</param>
/// <param name="Observed">Typical error observed between days; null when there is none.</param>
/// <param name="Ratio">Observed over <paramref name="ByThemselves"/>; null without one of them.</param>
/// <param name="RatioInterval">Interval of the ratio by the F law, as if the two were of different players; null without a ratio.</param>
/// <param name="Explanation">What the comparison says, in words a report can print.</param>
public sealed record PropagatedError(
    double? ByThemselves, Interval? ByThemselvesInterval, double? Together, IReadOnlyList<InputError> Inputs, IReadOnlyList<string> TakenAsExact,
    double? Observed, double? Ratio, Interval? RatioInterval, string Explanation)
{
    /// <summary>A disagreement is called large when the ratio's interval leaves out 1 and the ratio lies outside 0.8 to 1.25 (our choice).</summary>
    public bool IsLarge => Ratio is { } r && RatioInterval is { } i && !i.Contains(1) && r is < 0.8 or > 1.25;

    /// <summary>Whether a large disagreement goes away when the inputs' errors are taken together.</summary>
    public bool IsExplained => DisagreementText.IsExplained(this);

    /// <summary>Identifiers of the metrics that measure the inputs the formula uses.</summary>
    internal IReadOnlyList<string> Measures { get; init; } = [];

    internal static PropagatedError Of(BenchSquad squad, MetricSketch sketch, SeasonValues values, TestQuality quality)
    {
        CarriedErrors? carried = null;
        // The formula is asked thousands of times, and other inputs may send it where it never ends.
        if (!TimeLimit.Kept(() => carried = CarriedErrors.Of(squad, sketch, values, quality), sketch.Limits.MadeUp) || carried is null)
            return new(null, null, null, [], [], null, null, null, "The formula takes too long to be asked again with other inputs, so no error was carried through it.");
        return Of(squad, values, quality, carried) with { Measures = carried.Measures };
    }

    private static PropagatedError Of(BenchSquad squad, SeasonValues values, TestQuality quality, CarriedErrors carried)
    {
        var observed = values.Reliability(squad.Profile).HoldsDayToDayVariation ? quality.TypicalError : null;
        if (carried.Inputs.Count == 0) return new(null, null, null, [], carried.TakenAsExact, observed, null, null, "No error of an input is known, so none can be carried through the formula.");
        var (variance, df) = (carried.ByThemselves, carried.DegreesOfFreedom);
        if (variance <= 0) return new(null, null, null, carried.Inputs, carried.TakenAsExact, observed, null, null, "The formula does not change with the errors of its inputs.");
        var error = Math.Sqrt(variance);
        double Limit(double p) => double.IsPositiveInfinity(df) ? error : error * Math.Sqrt(df / ChiSquareLaw.Quantile(p, df));
        var bare = new PropagatedError(error, new(Limit(0.975), Limit(0.025)), carried.Together is { } t ? Math.Sqrt(t) : null, carried.Inputs, carried.TakenAsExact, observed, null, null, "");
        if (observed is not { } seen) return bare with { Explanation = "No error between days was observed to set it against." };
        var own = values.Reliability(squad.Profile).DegreesOfFreedom;
        var ratio = seen / error;
        double Law(double p) => double.IsPositiveInfinity(df) ? ChiSquareLaw.Quantile(p, own) / own
            : double.IsPositiveInfinity(own) ? df / ChiSquareLaw.Quantile(1 - p, df) : FisherLaw.Quantile(p, own, df);
        var known = double.IsPositiveInfinity(own) && double.IsPositiveInfinity(df);
        bare = bare with { Ratio = ratio, RatioInterval = known ? new(ratio, ratio) : new(ratio / Math.Sqrt(Law(0.975)), ratio / Math.Sqrt(Law(0.025))) };
        return bare with { Explanation = DisagreementText.Of(bare) };
    }
}
