using Analytics.Quantities;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>From the lowest to the highest value under the assumptions made. It is no confidence interval: nobody knows where inside it the truth lies.</summary>
/// <typeparam name="T">Quantity.</typeparam>
/// <param name="Low">Lowest.</param>
/// <param name="High">Highest.</param>
public readonly record struct QuantityRange<T>(T Low, T High) where T : struct, IQuantity<T>
{
    /// <summary>Both ends in words.</summary>
    public override string ToString() => Low.Equals(High) ? $"{Low}" : $"{Low} to {High}";

    internal IEnumerable<ResultLine> Lines(string name) => Low.Equals(High)
        ? [new(name, Low.Si, Low.SiUnit)]
        : [new($"{name}, lowest", Low.Si, Low.SiUnit), new($"{name}, highest", High.Si, High.SiUnit)];

    internal static QuantityRange<T> Of(IEnumerable<double> si)
    {
        double[] all = [.. si];
        return new(T.FromSi(all.Min()), T.FromSi(all.Max()));
    }
}
