namespace Analytics.Statistics.Summaries;

/// <summary>Sample quantiles; the definition is always named, and type 7 of Hyndman and Fan where none is asked for [hyndmanfan1996].</summary>
/// <remarks>
/// Type 7 interpolates at position (n − 1) p + 1 of the sorted values. R, NumPy and the inclusive percentile of
/// spreadsheets do the same by default; some statistics packages use type 6 and give wider quartiles.
/// </remarks>
public static class Quantiles
{
    /// <summary>Factor that makes the median absolute deviation estimate a normal standard deviation: 1/Φ⁻¹(0.75).</summary>
    public const double NormalConsistency = 1.4826022185056018;

    /// <summary>Factor that makes the mean absolute deviation estimate a normal standard deviation: √(π/2).</summary>
    public const double NormalConsistencyOfMean = 1.2533141373155003;

    /// <summary>Quantile of a named type, in the unit of the values.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    /// <param name="p">Share of the values below, 0 to 1.</param>
    /// <param name="type">Which of the nine definitions.</param>
    public static double Of(IReadOnlyList<double> values, double p, QuantileType type = QuantileType.ModeOfShare)
    {
        Require.Sample(values, 1, nameof(values));
        return OfSorted([.. values.Order()], p, type);
    }

    /// <summary>Quantile of type 7, in the unit of the values.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    /// <param name="p">Share of the values below, 0 to 1.</param>
    public static double Type7(IReadOnlyList<double> values, double p) => Of(values, p);

    /// <summary>The middle value; the mean of the two middle ones when n is even.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    public static double Median(IReadOnlyList<double> values) => Of(values, 0.5);

    /// <summary>Median of the absolute distances from the median, not rescaled; times <see cref="NormalConsistency"/> it estimates an SD.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    public static double MedianAbsoluteDeviation(IReadOnlyList<double> values)
    {
        var median = Median(values);
        return Median([.. values.Select(v => Math.Abs(v - median))]);
    }

    /// <summary>Mean of the absolute distances from the median, not rescaled; times <see cref="NormalConsistencyOfMean"/> it estimates an SD.</summary>
    /// <param name="values">At least one finite value, in any order.</param>
    public static double MeanAbsoluteDeviation(IReadOnlyList<double> values)
    {
        var median = Median(values);
        return Moments.Mean([.. values.Select(v => Math.Abs(v - median))]);
    }

    internal static double OfSorted(double[] sorted, double p, QuantileType type)
    {
        Require.Within(p, 0, 1, nameof(p));
        var n = sorted.Length;
        // Places that should be whole come out a few units in the last digit off; without this slack a step would be missed.
        var slack = 4 * 2.220446049250313e-16 * n;
        if (type is QuantileType.InverseOfDistribution or QuantileType.InverseWithAveraging or QuantileType.NearestEven)
        {
            var at = n * p - (type == QuantileType.NearestEven ? 0.5 : 0);
            var whole = Math.Floor(at + slack);
            var atStep = at <= whole + slack;
            return type switch
            {
                QuantileType.InverseOfDistribution => Value(sorted, atStep ? whole : whole + 1),
                QuantileType.InverseWithAveraging => atStep ? Middle(Value(sorted, whole), Value(sorted, whole + 1)) : Value(sorted, whole + 1),
                _ => Value(sorted, atStep && whole % 2 == 0 ? whole : whole + 1),
            };
        }

        var place = type switch
        {
            QuantileType.LinearOfDistribution => n * p,
            QuantileType.MidSteps => n * p + 0.5,
            QuantileType.ExpectedShare => (n + 1) * p,
            QuantileType.ModeOfShare => (n - 1) * p + 1,
            QuantileType.MedianUnbiased => (n + 1.0 / 3) * p + 1.0 / 3,
            QuantileType.NormalUnbiased => (n + 0.25) * p + 0.375,
            _ => throw new ArgumentOutOfRangeException(nameof(type), type, $"{type} is not one of the nine types; allowed: 1 to 9."),
        };
        var below = Math.Floor(place);
        var low = Value(sorted, below);
        return low + (place - below) * (Value(sorted, below + 1) - low);
    }

    /// <summary>The value at a place counted from 1; the ends beyond them.</summary>
    private static double Value(double[] sorted, double place) => sorted[(int)Math.Clamp(place - 1, 0, sorted.Length - 1)];

    private static double Middle(double a, double b) => a + (b - a) / 2;
}
