using Analytics.Quantities;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.ChangeOfDirection;

/// <summary>
/// Difference between sides in percent, (slower − faster)/denominator·100, positive when the right is slower. Its standard error comes from the errors of both figures by derivatives; where the two share
/// an error (deficits share the sprint) that is carried too. With errors of the usual size, small asymmetries are noise: read the interval. Source: [dossantos2019].
/// </summary>
public sealed record SideAsymmetry : Result
{
    private SideAsymmetry(string of, Duration left, Duration right, AsymmetryDenominator denominator, (double Value, double? Error) percent, double degreesOfFreedom)
    {
        (Figure, Left, Right, Denominator, Percent, StandardErrorPercent, DegreesOfFreedom) = (of, left, right, denominator, percent.Value, percent.Error, degreesOfFreedom);
        if (percent.Error is not { } error) return;
        var reach = StudentLaw.TwoSided(0.95, degreesOfFreedom) * error;
        Interval = new(percent.Value - reach, percent.Value + reach);
    }

    /// <summary>Figure of the left.</summary>
    public Duration Left { get; }

    /// <summary>Figure of the right.</summary>
    public Duration Right { get; }

    /// <summary>What it was divided by.</summary>
    public AsymmetryDenominator Denominator { get; }

    /// <summary>Asymmetry in %, positive when the right is slower.</summary>
    public double Percent { get; }

    /// <summary>Its standard error in %; null when no typical error was given.</summary>
    public double? StandardErrorPercent { get; }

    /// <summary>Degrees of freedom of the typical error; infinite when taken as known.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>95 % interval in %; null without a standard error. When it holds 0 the sides may be alike.</summary>
    public Interval? Interval { get; }

    private string Figure { get; }

    /// <summary>The asymmetry of two times.</summary>
    /// <param name="left">Mean time of the left, above 0.</param>
    /// <param name="right">Mean time of the right, above 0.</param>
    /// <param name="denominator">What to divide by.</param>
    /// <param name="leftError">Standard error of the left (typical error over the root of its runs); null when not known.</param>
    /// <param name="rightError">The same for the right.</param>
    /// <param name="degreesOfFreedom">Of the typical error; infinite when taken as known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time of 0 or less, an error below 0.</exception>
    public static SideAsymmetry Of(
        Duration left, Duration right, AsymmetryDenominator denominator, Duration? leftError = null, Duration? rightError = null, double degreesOfFreedom = double.PositiveInfinity)
        => Make("time", left, right, denominator, leftError, rightError, Duration.Zero, degreesOfFreedom);

    internal static SideAsymmetry Make(
        string of, Duration left, Duration right, AsymmetryDenominator denominator, Duration? leftError, Duration? rightError, Duration shared, double degreesOfFreedom)
    {
        Require.Positive(left, $"{of} of the left");
        Require.Positive(right, $"{of} of the right");
        if (leftError is { } l) Require.NotNegative(l, "error of the left");
        if (rightError is { } r) Require.NotNegative(r, "error of the right");
        var sign = right >= left ? 1 : -1;
        double slow = Math.Max(left.Seconds, right.Seconds), fast = Math.Min(left.Seconds, right.Seconds);
        var (value, bySlow, byFast) = denominator switch
        {
            AsymmetryDenominator.Faster => ((slow - fast) / fast, 1 / fast, -slow / (fast * fast)),
            AsymmetryDenominator.Slower => ((slow - fast) / slow, fast / (slow * slow), -1 / slow),
            AsymmetryDenominator.Mean => (2 * (slow - fast) / (slow + fast), 4 * fast / ((slow + fast) * (slow + fast)), -4 * slow / ((slow + fast) * (slow + fast))),
            _ => throw new ArgumentOutOfRangeException(nameof(denominator), denominator, $"Unknown denominator {denominator}."),
        };
        double? error = null;
        if (leftError is { } el && rightError is { } er)
        {
            var (slowError, fastError) = sign > 0 ? (er.Seconds, el.Seconds) : (el.Seconds, er.Seconds);
            // A shared error moves both figures together, so their derivatives add before squaring.
            error = 100 * double.Hypot(double.Hypot(bySlow * slowError, byFast * fastError), (bySlow + byFast) * shared.Seconds);
        }
        return new(of, left, right, denominator, (sign * 100 * value, error), degreesOfFreedom);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new($"Asymmetry of {Figure}", $"(slower − faster)/{Denominator.ToString().ToLowerInvariant()}, positive when the right is slower; error by propagation",
    [
        new("asymmetry", Percent, "%") { Interval = Interval, StandardError = StandardErrorPercent, Note = StandardErrorPercent is null ? "no error known" : string.Empty },
        new("left", Left.Seconds, "s"), new("right", Right.Seconds, "s"),
    ])
    {
        Basis = "mean of each side",
        Remarks = Interval is { } i && i.Contains(0) ? ["The interval holds 0: the sides may be alike."] : [],
    };
}
