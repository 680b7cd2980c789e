using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.EffectSize;

/// <summary>Difference of two group means without the assumption of equal spread, degrees of freedom by Welch and Satterthwaite [welch1947].</summary>
/// <param name="Difference">Mean of the first less mean of the second, in the unit of the values.</param>
/// <param name="StandardError">Its standard error, above 0.</param>
/// <param name="DegreesOfFreedom">Welch–Satterthwaite degrees of freedom.</param>
/// <param name="Level">Coverage of the interval.</param>
/// <param name="Sizes">Values in the two groups.</param>
public sealed record WelchTest(double Difference, double StandardError, double DegreesOfFreedom, double Level, (int First, int Second) Sizes) : Result
{
    /// <summary>Difference over its standard error.</summary>
    public double T => Difference / StandardError;

    /// <summary>Two-sided p of "no difference".</summary>
    public double P => 2 * StudentLaw.Cdf(-Math.Abs(T), DegreesOfFreedom);

    /// <summary>Interval of the difference.</summary>
    public Interval Interval
    {
        get
        {
            var reach = StudentLaw.TwoSided(Level, DegreesOfFreedom) * StandardError;
            return new(Difference - reach, Difference + reach, Level);
        }
    }

    /// <summary>From the values themselves.</summary>
    /// <param name="first">At least 2 finite values.</param>
    /// <param name="second">At least 2 finite values, of other persons.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Too few values, a value that is not finite, or no spread at all.</exception>
    public static WelchTest Between(IReadOnlyList<double> first, IReadOnlyList<double> second, double level = 0.95)
        => Between(GroupMoments.Of(first), GroupMoments.Of(second), level);

    /// <summary>From published means and standard deviations.</summary>
    /// <param name="first">First group.</param>
    /// <param name="second">Second group, of other persons.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Neither group has spread.</exception>
    public static WelchTest Between(GroupMoments first, GroupMoments second, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        Require.Share(level, nameof(level));
        double a = first.ErrorVariance, b = second.ErrorVariance;
        if (!(a + b > 0)) throw new ArgumentException("Neither group has any spread: the error of the difference cannot be estimated.");
        return new(
            first.Mean - second.Mean, Math.Sqrt(a + b),
            (a + b) * (a + b) / (a * a / (first.N - 1) + b * b / (second.N - 1)), level, (first.N, second.N));
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Difference between two means", "Welch's t test, spreads may differ [welch1947]",
        [
            new("difference", Difference) { Interval = Interval, StandardError = StandardError, DegreesOfFreedom = DegreesOfFreedom },
            new("t", T),
            new("p", P) { Note = "two-sided, of no difference" },
        ])
    { Basis = $"{Sizes.First} and {Sizes.Second} values of separate persons" };
}
