using System.Globalization;

namespace Analytics.Statistics.Fitting;

/// <summary>What a fit asks of its arguments.</summary>
internal static class FitArguments
{
    public static void Check(ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> start, int p, FitOptions options)
    {
        if (x.Length != y.Length)
            throw new ArgumentException($"There are {x.Length} abscissas and {y.Length} observations; they must be as many.", nameof(y));
        if (start.Length != p)
            throw new ArgumentException($"There are {start.Length} start values; the model has {p} parameters.", nameof(start));
        if ((options.Lower?.Count ?? p) != p || (options.Upper?.Count ?? p) != p)
            throw new ArgumentException($"Bounds must be null or {p} numbers, one per parameter.", nameof(options));
        for (var j = 0; j < p; j++)
        {
            var (low, high) = (options.Lower?[j] ?? double.NegativeInfinity, options.Upper?[j] ?? double.PositiveInfinity);
            if (!(low <= high))
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"The bounds of parameter {j} are {low} and {high}; the lower one must not be above the upper one."), nameof(options));
        }
        CheckFinite(x, nameof(x));
        CheckFinite(y, nameof(y));
        CheckFinite(start, nameof(start));
    }

    private static void CheckFinite(ReadOnlySpan<double> values, string name)
    {
        for (var i = 0; i < values.Length; i++)
            if (!double.IsFinite(values[i]))
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"{name}[{i}] is {values[i]}; every number must be finite. Leave a missing point out."), name);
    }
}
