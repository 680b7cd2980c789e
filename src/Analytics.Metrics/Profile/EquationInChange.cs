using System.Globalization;
using Analytics.Metrics.Catalogue;

namespace Analytics.Metrics.Profile;

/// <summary>What the equations behind two values add to the error of their difference.</summary>
/// <remarks>
/// Lasting parts. Measured against estimated: in full. Two equations: both in full. The same equation at other repetitions: e₁² + e₂² − 2 c min(e₁², e₂²).
/// Up to 2 repetitions apart c = 1: the larger error contains the smaller one, as in a sum whose terms are the repetitions beyond the first (the form of
/// the scatter in docs/methods/strength.md). From 6 apart c = 0: how a person's bias at 3 goes with that at 10 is not known. Between, c falls evenly, so that
/// one repetition more never turns a verdict. Errors are taken as shares of the value, since a stronger athlete's bias is as many per cent.
/// Fresh parts: of both values, in full, unless the retest was of estimates and holds them.
/// </remarks>
/// <param name="Variance">Variance to add to 2 TE², in the metric's unit squared.</param>
/// <param name="Shared">Standard error of the part of it common to all athletes, with the sign it has in after minus before.</param>
/// <param name="Remark">What was compared and what that costs, in words a report can print; null when both were measured.</param>
internal sealed record EquationInChange(double Variance, double Shared, string? Remark)
{
    /// <summary>Repetitions apart up to which the smaller error is wholly in the larger one (our choice, no source).</summary>
    private const double AlikeWithin = 2;

    /// <summary>Repetitions apart from which the errors are taken to have nothing in common (our choice, no source).</summary>
    private const double UnrelatedFrom = 6;

    public static EquationInChange Of(DayValue before, DayValue after, MetricReliability reliability)
    {
        var (first, second) = (before.Equation, after.Equation);
        if (first is null && second is null) return new(0, 0, null);
        var fresh = reliability.HoldsFreshEquationError ? 0 : Squared(first?.Fresh) + Squared(second?.Fresh);
        if (first is null || second is null)
        {
            var made = first ?? second!;
            return new(made.LastingVariance + fresh, second is null ? -made.Shared : made.Shared, OneEstimated(first is null, made));
        }

        if (first.Equation != second.Equation || before.Value <= 0 || after.Value <= 0)
        {
            return new(first.LastingVariance + second.LastingVariance + fresh, Math.Sqrt(Squared(first.Shared) + Squared(second.Shared)),
                "the two days estimated by different equations: the errors of both are added");
        }

        if (first.Repetitions == second.Repetitions)
            return new(fresh, 0, first.Repetitions is null ? null : $"both days estimated from {Words(first)}: a lasting error of the equation cancels");
        var common = Math.Clamp((UnrelatedFrom - Math.Abs(second.Repetitions - first.Repetitions ?? UnrelatedFrom)) / (UnrelatedFrom - AlikeWithin), 0, 1);
        var shared = Left(first.Shared, second.Shared);
        var sign = second.Shared / after.Value < first.Shared / before.Value ? -1 : 1;
        return new(Left(first.Personal, second.Personal) + shared + fresh, sign * Math.Sqrt(shared),
            $"one day estimated from {Words(first)}, the other from {Words(second)}: the part of the equation's error they do not have in common is added");

        double Left(double one, double other)
        {
            var (a, b) = (Squared(one / before.Value), Squared(other / after.Value));
            // Nothing is left of equal shares, however they are rounded.
            return Math.Max(0, a + b - 2 * common * Math.Min(a, b)) * Squared((before.Value + after.Value) / 2);
        }
    }

    private static string OneEstimated(bool measuredFirst, EquationError made)
    {
        var how = made.Repetitions is null ? "by an equation" : "from " + Words(made);
        return (measuredFirst ? $"the earlier day measured, the later estimated {how}" : $"the earlier day estimated {how}, the later measured")
            + ": the equation's error is added";
    }

    private static string Words(EquationError error) => string.Create(CultureInfo.InvariantCulture, $"{error.Repetitions:0.##} repetitions");

    private static double Squared(double? x) => x * x ?? 0;
}
