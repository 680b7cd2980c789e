using System.Collections;

namespace Analytics.Metrics.Motion;

/// <summary>Numbers by sample as a list in which NaN, our inner mark of a gap, shows as null. A view: nothing is copied.</summary>
/// <param name="values">The numbers.</param>
/// <param name="factor">New units in one of theirs.</param>
internal sealed class BlankSeries(double[] values, double factor = 1) : IReadOnlyList<double?>
{
    public int Count => values.Length;

    public double? this[int index] => double.IsNaN(values[index]) ? null : factor * values[index];

    public IEnumerator<double?> GetEnumerator()
    {
        for (var i = 0; i < values.Length; i++) yield return this[i];
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
