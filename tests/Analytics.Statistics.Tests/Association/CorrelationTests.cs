using Analytics.Statistics.Association;

namespace Analytics.Statistics.Tests.Association;

public sealed class CorrelationTests
{
    private static readonly double[] s_x = [3.1, 2.2, 5.9, 4.4, 8.0, 7.1, 6.6, 1.0];
    private static readonly double[] s_y = [2.9, 1.5, 6.6, 3.0, 7.7, 9.1, 4.8, 2.0];

    public static TheoryData<CorrelationKind> Kinds => [.. Enum.GetValues<CorrelationKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Shift_scale_and_order_do_not_matter(CorrelationKind kind)
    {
        var plain = Of(kind, s_x, s_y);
        int[] order = [4, 2, 7, 0, 1, 6, 3, 5];
        var moved = Of(kind, [.. order.Select(i => 1000 + 3 * s_x[i])], [.. order.Select(i => 0.01 * s_y[i] - 7)]);
        Oracle.Close(plain.Value, moved.Value, 1e-12);
        Oracle.Close(plain.P!.Value, moved.P!.Value, 1e-9);
        Oracle.Close(-plain.Value, Of(kind, s_x, [.. s_y.Select(v => -v)]).Value, 1e-12);
        Oracle.Close(plain.Value, Of(kind, s_y, s_x).Value, 1e-12);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(6)]
    public void Exact_p_counts_every_order(int n)
    {
        // Every order of n values, ranked against 1..n: the share at least as far out on one side, twice.
        double[] x = [.. Enumerable.Range(1, n).Select(i => (double)i)];
        var orders = Orders(x).ToList();
        var rhos = orders.Select(y => Correlation.Spearman(x, y).Value).ToArray();
        var taus = orders.Select(y => Correlation.Kendall(x, y).Value).ToArray();
        for (var i = 0; i < orders.Count; i += Math.Max(1, orders.Count / 40))
        {
            Oracle.Close(TwoSided(rhos, rhos[i]), Correlation.Spearman(x, orders[i]).P!.Value, 1e-12);
            Oracle.Close(TwoSided(taus, taus[i]), Correlation.Kendall(x, orders[i]).P!.Value, 1e-12);
        }
    }

    [Fact]
    public void Ties_and_many_pairs_are_not_called_exact()
    {
        Assert.True(Correlation.Spearman(s_x, s_y).IsExact);
        Assert.False(Correlation.Spearman([1, 1, 2, 3], [4, 2, 3, 5]).IsExact);
        Assert.False(Correlation.Kendall([1, 1, 2, 3], [4, 2, 3, 5]).IsExact);
        double[] many = [.. Enumerable.Range(0, 60).Select(i => i * 37 % 60 + 0.5)], index = [.. Enumerable.Range(0, 60).Select(i => (double)i)];
        Assert.False(Correlation.Spearman(index, many).IsExact);
        Assert.False(Correlation.Kendall(index, many).IsExact);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Intervals_cover_near_their_level(CorrelationKind kind)
    {
        // True values of a bivariate normal law with r = 0.6: Spearman (6/pi) asin(r/2), Kendall (2/pi) asin(r).
        var truth = kind switch { CorrelationKind.Pearson => 0.6, CorrelationKind.Spearman => 6 / Math.PI * Math.Asin(0.3), _ => 2 / Math.PI * Math.Asin(0.6) };
        var gauss = new Gaussian(77);
        const int runs = 3000;
        var held = 0;
        for (var run = 0; run < runs; run++)
        {
            double[] x = [.. Enumerable.Range(0, 25).Select(_ => gauss.Next())], y = [.. x.Select(v => 0.6 * v + 0.8 * gauss.Next())];
            held += Of(kind, x, y).Interval!.Value.Contains(truth) ? 1 : 0;
        }

        Assert.Equal(0.95, held / (double)runs, kind == CorrelationKind.Kendall ? 0.025 : 0.016);
    }

    [Fact]
    public void Prints_what_it_is()
    {
        var text = Correlation.Spearman(s_x, s_y).ToString();
        Assert.Contains("Bonett and Wright", text, StringComparison.Ordinal);
        Assert.Contains("p exact", text, StringComparison.Ordinal);
        Assert.Contains("8 pairs", text, StringComparison.Ordinal);
    }

    private static Correlation Of(CorrelationKind kind, double[] x, double[] y) => kind switch
    {
        CorrelationKind.Pearson => Correlation.Pearson(x, y),
        CorrelationKind.Spearman => Correlation.Spearman(x, y),
        _ => Correlation.Kendall(x, y),
    };

    private static double TwoSided(double[] all, double seen)
        => Math.Min(1, 2 * Math.Min(all.Count(v => v <= seen + 1e-9), all.Count(v => v >= seen - 1e-9)) / (double)all.Length);

    private static IEnumerable<double[]> Orders(double[] values)
    {
        if (values.Length == 1) return [values];
        return values.SelectMany(first => Orders([.. values.Where(v => !v.Equals(first))]).Select(rest => (double[])[first, .. rest]));
    }
}
