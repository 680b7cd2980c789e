using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Change;

/// <summary>One athlete's change between two occasions with its error.</summary>
/// <example>
/// <code>
/// var change = IndividualChange.Between(before: 140, after: 149, typicalError: 3.2, degreesOfFreedom: 21);
/// change.Interval();          // 9 ± t(.975, 21) √2 3.2
/// change.DetectableChange();  // the least change the interval can tell from none
/// </code>
/// </example>
/// <param name="Difference">After minus before, in the unit of the test.</param>
/// <param name="StandardError">Standard error of the difference; 0 only for a group whose members all changed by the same amount.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of that error; infinity when it is known.</param>
public sealed record IndividualChange(double Difference, double StandardError, double DegreesOfFreedom) : Result
{
    /// <summary>After minus before, in the unit of the test.</summary>
    public double Difference { get; init; } = Require.Finite(Difference, nameof(Difference));

    /// <summary>Standard error of the difference; 0 only for a group whose members all changed by the same amount.</summary>
    public double StandardError { get; init; } = Require.NotNegative(StandardError, nameof(StandardError));

    /// <summary>Degrees of freedom of that error; infinity when it is known.</summary>
    public double DegreesOfFreedom { get; init; } = Require.DegreesOfFreedom(DegreesOfFreedom, nameof(DegreesOfFreedom));

    /// <summary>Change judged against the typical error of the test: SE = TE √(1/m + 1/k).</summary>
    /// <param name="before">Value (mean of m occasions) before.</param>
    /// <param name="after">Value (mean of k occasions) after.</param>
    /// <param name="typicalError">Typical error of one occasion, above 0, from athletes tested twice without a true change.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom of the typical error; infinity when it is known.</param>
    /// <param name="occasionsBefore">Occasions behind <paramref name="before"/>, at least 1.</param>
    /// <param name="occasionsAfter">Occasions behind <paramref name="after"/>, at least 1.</param>
    public static IndividualChange Between(
        double before, double after, double typicalError, double degreesOfFreedom, int occasionsBefore = 1, int occasionsAfter = 1)
        => new(
            Require.Finite(after, nameof(after)) - Require.Finite(before, nameof(before)),
            Require.Positive(typicalError, nameof(typicalError)) * Math.Sqrt(
                1.0 / Require.AtLeast(occasionsBefore, 1, nameof(occasionsBefore)) + 1.0 / Require.AtLeast(occasionsAfter, 1, nameof(occasionsAfter))),
            Require.DegreesOfFreedom(degreesOfFreedom, nameof(degreesOfFreedom)));

    /// <summary>
    /// Change judged against each value's own error (a fit, or the athlete's own repeats): SE = √(SE₁² + SE₂²), degrees of
    /// freedom by Welch and Satterthwaite.
    /// </summary>
    /// <param name="before">Value before.</param>
    /// <param name="errorBefore">Its standard error, above 0.</param>
    /// <param name="degreesBefore">Degrees of freedom of that error; infinity when known.</param>
    /// <param name="after">Value after.</param>
    /// <param name="errorAfter">Its standard error, above 0.</param>
    /// <param name="degreesAfter">Degrees of freedom of that error; infinity when known.</param>
    public static IndividualChange BetweenOwnErrors(
        double before, double errorBefore, double degreesBefore, double after, double errorAfter, double degreesAfter)
    {
        var a = Math.Pow(Require.Positive(errorBefore, nameof(errorBefore)), 2);
        var b = Math.Pow(Require.Positive(errorAfter, nameof(errorAfter)), 2);
        var weight = a * a / Require.DegreesOfFreedom(degreesBefore, nameof(degreesBefore))
            + b * b / Require.DegreesOfFreedom(degreesAfter, nameof(degreesAfter));
        return new(
            Require.Finite(after, nameof(after)) - Require.Finite(before, nameof(before)),
            Math.Sqrt(a + b),
            weight > 0 ? (a + b) * (a + b) / weight : double.PositiveInfinity);
    }

    /// <summary>
    /// A new test judged against the athlete's own earlier ones: difference from their mean, SE = s √(1 + 1/m), m − 1 degrees of
    /// freedom. Its interval is the prediction rule t(m − 1) s √(1 + 1/m), wrong for an unchanged athlete at exactly its level.
    /// </summary>
    /// <param name="baseline">The athlete's m earlier tests, at least 2, not all equal, without trend.</param>
    /// <param name="after">The new test.</param>
    /// <exception cref="ArgumentException">Fewer than 2 tests, a value that is not finite, or all equal.</exception>
    public static IndividualChange FromOwnBaseline(IReadOnlyList<double> baseline, double after)
    {
        Require.Sample(baseline, 2, nameof(baseline));
        var spread = Moments.StandardDeviation(baseline);
        return spread > 0
            ? new(
                Require.Finite(after, nameof(after)) - Moments.Mean(baseline), spread * Math.Sqrt(1 + 1.0 / baseline.Count), baseline.Count - 1)
            : throw new ArgumentException(FormattableString.Invariant($"All {baseline.Count} values of baseline are equal: they show no error to judge a new test by. Use the typical error of the squad."), nameof(baseline));
    }

    /// <summary>
    /// The same change with a further, independent error whose size is known: SE² grows by its square, the degrees of freedom by Welch
    /// and Satterthwaite.
    /// </summary>
    /// <param name="standardError">0 or more, in the unit of the test.</param>
    public IndividualChange WithKnownError(double standardError)
    {
        var own = PositiveError * PositiveError;
        var total = own + Math.Pow(Require.NotNegative(standardError, nameof(standardError)), 2);
        return this with { StandardError = Math.Sqrt(total), DegreesOfFreedom = DegreesOfFreedom * Math.Pow(total / own, 2) };
    }

    /// <summary>Interval of the true change: difference ± t SE.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Interval Interval(double level = 0.95)
    {
        var reach = DetectableChange(level);
        return new(Difference - reach, Difference + reach, level);
    }

    /// <summary>Minimal detectable change t SE: the smallest difference whose interval leaves out 0.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public double DetectableChange(double level = 0.95) => StudentLaw.TwoSided(level, DegreesOfFreedom) * StandardError;

    /// <summary>Share of the flat-prior posterior beyond, within and below a threshold; see <see cref="FlatPriorShares"/>.</summary>
    /// <param name="threshold">Smallest worthwhile change, 0 or more.</param>
    public FlatPriorShares Shares(double threshold) => FlatPriorShares.Of(this, threshold);

    // Tests and probabilities divide by the error; without one they would be 0/0.
    internal double PositiveError => StandardError > 0
        ? StandardError
        : throw new InvalidOperationException("The change has an error of 0 (all members changed by the same amount): no test and no probability can be made of it.");

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Change of one athlete", double.IsPositiveInfinity(DegreesOfFreedom) ? "difference with known error" : "difference with estimated error, Student's t",
        [
            new("change", Difference) { Interval = Interval(), StandardError = StandardError, DegreesOfFreedom = DegreesOfFreedom },
            new("detectable change", DetectableChange()) { Note = "smallest difference whose 95 % interval leaves out 0" },
        ])
    { Basis = "two occasions of one athlete" };
}
