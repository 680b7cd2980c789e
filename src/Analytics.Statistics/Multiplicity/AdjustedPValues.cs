using Analytics.Statistics.Results;

namespace Analytics.Statistics.Multiplicity;

/// <summary>P values corrected for their number, in the order given.</summary>
/// <param name="Method">The correction.</param>
/// <param name="Raw">The p values as given.</param>
/// <param name="Adjusted">The corrected ones, each at most 1: reject where they are at most α.</param>
public sealed record AdjustedPValues(Adjustment Method, IReadOnlyList<double> Raw, IReadOnlyList<double> Adjusted) : Result
{
    /// <summary>Corrects p values.</summary>
    /// <param name="p">At least one p value, each 0 to 1.</param>
    /// <param name="method">The correction.</param>
    /// <exception cref="ArgumentException">No p value, or one outside 0 to 1.</exception>
    public static AdjustedPValues Of(IReadOnlyList<double> p, Adjustment method)
    {
        Require.Sample(p, 1, nameof(p));
        for (var i = 0; i < p.Count; i++) Require.Within(p[i], 0, 1, FormattableString.Invariant($"p[{i}]"));
        var order = Enumerable.Range(0, p.Count).OrderBy(i => p[i]).ToArray();
        double m = p.Count, harmonic = Enumerable.Range(1, p.Count).Sum(i => 1.0 / i);
        // Factor of the p value of a given rank, 1 for the smallest.
        Func<int, double> factor = method switch
        {
            Adjustment.Bonferroni => _ => m,
            Adjustment.Holm or Adjustment.Hochberg => rank => m - rank + 1,
            Adjustment.BenjaminiHochberg => rank => m / rank,
            Adjustment.BenjaminiYekutieli => rank => harmonic * m / rank,
            _ => throw new ArgumentOutOfRangeException(nameof(method), method, "Unknown adjustment."),
        };
        var adjusted = new double[p.Count];
        if (method is Adjustment.Bonferroni or Adjustment.Holm)
        {
            // From the smallest up: none may be below one before it. For Bonferroni that changes nothing.
            double floor = 0;
            for (var i = 0; i < order.Length; i++) adjusted[order[i]] = floor = Math.Max(floor, Math.Min(1, factor(i + 1) * p[order[i]]));
        }
        else
        {
            double ceiling = 1;
            for (var i = order.Length - 1; i >= 0; i--) adjusted[order[i]] = ceiling = Math.Min(ceiling, factor(i + 1) * p[order[i]]);
        }

        return new(method, p, adjusted);
    }

    /// <summary>How many are rejected.</summary>
    /// <param name="alpha">Rate to keep, above 0 and below 1.</param>
    public int Rejected(double alpha = 0.05)
    {
        Require.Share(alpha, nameof(alpha));
        return Adjusted.Count(a => a <= alpha);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "P values corrected for their number", Words,
        [.. Adjusted.Select((a, i) => new ResultLine(FormattableString.Invariant($"test {i + 1}"), a) { Note = FormattableString.Invariant($"raw {SheetProbability.Of(Raw[i])}") })])
    {
        Basis = FormattableString.Invariant($"{Raw.Count} p values"),
        Remarks = [FormattableString.Invariant($"{Rejected()} of {Raw.Count} are at most 0.05.")],
    };

    private string Words => Method switch
    {
        Adjustment.Bonferroni => "Bonferroni: chance of any false rejection",
        Adjustment.Holm => "Holm: chance of any false rejection [holm1979]",
        Adjustment.Hochberg => "Hochberg: chance of any false rejection, independent tests [hochberg1988]",
        Adjustment.BenjaminiHochberg => "Benjamini–Hochberg: false discovery rate [benjaminihochberg1995]",
        _ => "Benjamini–Yekutieli: false discovery rate under any dependence [benjaminiyekutieli2001]",
    };
}
