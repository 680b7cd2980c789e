using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Change;

/// <summary>
/// How differently athletes responded: the spread of changes beyond what a control group, or test error alone, shows [atkinsonbatterham2015; hopkins2015].
/// </summary>
/// <remarks>
/// SD_IR = √(SD²exp − SD²con), with its sign kept. A negative value is a valid estimate near zero: it says that no difference in response was
/// found, and cutting it at zero would bias every later average.
/// </remarks>
public sealed record IndividualResponses : Result
{
    private readonly VarianceDifference _difference;
    private readonly string _basis;

    private IndividualResponses(VarianceDifference difference, double level, string basis)
        => (_difference, Level, _basis) = (difference, Require.Share(level, nameof(level)), basis);

    /// <summary>Coverage of the intervals.</summary>
    public double Level { get; }

    /// <summary>Variance of true responses, negative values kept, in squared units of the test.</summary>
    public double Variance => _difference.Value;

    /// <summary>Its standard error.</summary>
    public double VarianceError => _difference.StandardError;

    /// <summary>Interval of the variance; both limits may be negative.</summary>
    public Interval VarianceInterval => _difference.Interval(Level);

    /// <summary>SD of true responses, in the unit of the test; negative when the variance is.</summary>
    public double StandardDeviation => VarianceDifference.SignedRoot(Variance);

    /// <summary>Interval of the SD, each limit the root of the variance's with its sign.</summary>
    public Interval Interval => VarianceDifference.SignedRoot(VarianceInterval);

    /// <summary>From the spread of changes with and without the programme.</summary>
    /// <param name="withProgramme">SD of changes of those who did it, 0 or more.</param>
    /// <param name="athletes">How many did, at least 2.</param>
    /// <param name="without">SD of changes of those who did not, over the same time, 0 or more.</param>
    /// <param name="controls">How many did not, at least 2.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static IndividualResponses Between(double withProgramme, int athletes, double without, int controls, double level = 0.95)
        => new(
            VarianceDifference.Of(
                Square(withProgramme, nameof(withProgramme)), Require.AtLeast(athletes, 2, nameof(athletes)) - 1,
                Square(without, nameof(without)), Require.AtLeast(controls, 2, nameof(controls)) - 1),
            level, FormattableString.Invariant($"changes of {athletes} athletes and {controls} controls"));

    /// <summary>
    /// Without controls: test error of both occasions, 2 TE², stands in for them. Right only when the retest that gave the typical error
    /// was as far apart as the two occasions.
    /// </summary>
    /// <param name="standardDeviation">SD of changes, 0 or more.</param>
    /// <param name="athletes">How many changed, at least 2.</param>
    /// <param name="typicalError">Typical error of one occasion, 0 or more.</param>
    /// <param name="degreesOfFreedom">Its degrees of freedom; infinity when known.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public static IndividualResponses BeyondError(
        double standardDeviation, int athletes, double typicalError, double degreesOfFreedom, double level = 0.95)
        => new(
            VarianceDifference.Of(
                Square(standardDeviation, nameof(standardDeviation)), Require.AtLeast(athletes, 2, nameof(athletes)) - 1,
                2 * Square(typicalError, nameof(typicalError)), Require.DegreesOfFreedom(degreesOfFreedom, nameof(degreesOfFreedom))),
            level, FormattableString.Invariant($"changes of {athletes} athletes, test error taken from a retest"));

    /// <summary>Share of athletes whose true response is worth having, if responses are normal; null when no spread of responses was found.</summary>
    /// <param name="meanChange">Mean true change, in the unit of the test.</param>
    /// <param name="worthwhile">Smallest worthwhile change, 0 or more.</param>
    public ResponderShares? Responders(double meanChange, double worthwhile)
        => Variance > 0 ? ResponderShares.Of(meanChange, StandardDeviation, worthwhile) : null;

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Individual responses", "difference of the variances of changes, sign kept, normal interval [atkinsonbatterham2015; hopkins2015]",
        [
            new("SD of responses", StandardDeviation) { Interval = Interval, Note = Variance > 0 ? "" : "negative: no difference in response was found" },
            new("variance of responses", Variance) { Interval = VarianceInterval, StandardError = VarianceError },
        ])
    {
        Basis = _basis,
        Remarks = Interval.Low <= 0 ? ["The interval reaches zero: responses may be all alike, and no athlete should be called a responder from it."] : [],
    };

    private static double Square(double spread, string name) => Require.NotNegative(spread, name) * spread;
}

/// <summary>Share of athletes beyond and within the smallest worthwhile change when true changes are normal.</summary>
/// <param name="Above">Share with a true change above it.</param>
/// <param name="Within">Share between.</param>
/// <param name="Below">Share with a true change below minus it.</param>
public sealed record ResponderShares(double Above, double Within, double Below) : Result
{
    /// <summary>Shares of a normal law of true changes.</summary>
    /// <param name="meanChange">Mean true change, in the unit of the test.</param>
    /// <param name="spread">SD of true changes, above 0: freed of test error, not the SD of the observed changes.</param>
    /// <param name="worthwhile">Smallest worthwhile change, 0 or more.</param>
    public static ResponderShares Of(double meanChange, double spread, double worthwhile)
    {
        Require.Finite(meanChange, nameof(meanChange));
        Require.Positive(spread, nameof(spread));
        Require.NotNegative(worthwhile, nameof(worthwhile));
        var above = NormalLaw.Cdf((meanChange - worthwhile) / spread);
        var below = NormalLaw.Cdf((-worthwhile - meanChange) / spread);
        return new(above, NormalLaw.Cdf((worthwhile - meanChange) / spread) - below, below);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Share of responders", "normal law of true changes [swinton2018]",
        [new("above", 100 * Above, "%"), new("within", 100 * Within, "%"), new("below", 100 * Below, "%")])
    {
        Basis = "mean change and SD of individual responses, taken as known",
        Remarks = ["A share of the squad, not a list of names: who they are this does not tell."],
    };
}
