using Analytics.Metrics.Profile;

namespace Analytics.Metrics.Transfer;

/// <summary>
/// How well each value of an athlete is known beside his others. Values made the same way share what the equation gets wrong about him, and it cancels in a gain;
/// a value made another way (a set of repetitions among heaviest singles) brings the equation's error along and counts for less.
/// </summary>
internal static class ValuePrecision
{
    /// <summary>TE²/(TE² + equation²) of each value, in the order given; 1 when no error is known.</summary>
    public static IReadOnlyList<double> Of(IReadOnlyList<DayValue> own, double? typicalError, bool holdsFresh)
    {
        if (typicalError is not > 0 || own.All(v => v.Equation is null)) return [.. own.Select(_ => 1.0)];
        var usual = own.GroupBy(v => v.Equation?.Equation ?? "").OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).First().Key;
        var error = typicalError.Value * typicalError.Value;
        return [.. own.Select(v =>
        {
            var fresh = holdsFresh || v.Equation is null ? 0 : v.Equation.Fresh * v.Equation.Fresh;
            // A measured value among estimated ones lacks their lasting error, which is the same as having it alone.
            var lasting = (v.Equation?.Equation ?? "") == usual ? 0 : (v.Equation ?? own.First(o => o.Equation is not null).Equation!).LastingVariance;
            // So little weight is as good as none, and far inside what the correlation takes.
            return Math.Max(1e-3, error / (error + fresh + lasting));
        })];
    }
}
