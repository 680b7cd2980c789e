namespace Analytics.Statistics.Reliability;

/// <summary>Least squares of a test on one or two others over some rows, and what of it returns.</summary>
internal sealed class RemainderParts(OccasionPair test, IReadOnlyList<OccasionPair> others, int groups)
{
    // A second test that is the first one over again adds nothing that could be told from rounding.
    private const double SameAgain = 1e-10;

    // What is left of an exact copy is rounding, in parts of the variance.
    private const double Rounding = 1e-12;

    public double? Share(ReadOnlySpan<int> rows) => Of([.. rows]).Share;

    public (double? Share, double? Repeats, double FromOthers) Of(int[] rows)
    {
        double[] a = Column(test.First, rows), b = Column(test.Second, rows);
        var y = Mean(a, b);
        var x = others.Select(o => (First: Column(o.First, rows), Second: Column(o.Second, rows))).ToList();
        var means = x.ConvertAll(o => Mean(o.First, o.Second));
        var slopes = Slopes(y, means);
        var (left, right, rest) = (a, b, y);
        for (var k = 0; k < slopes.Length; k++)
        {
            left = Less(left, slopes[k], x[k].First);
            right = Less(right, slopes[k], x[k].Second);
            rest = Less(rest, slopes[k], means[k]);
        }

        var df = rows.Length - groups;
        var spent = (double)df / (df - others.Count);
        double whole = Dot(a, b), remains = Dot(left, right), size = Dot(y, y);
        double ownA = Dot(left, left), ownB = Dot(right, right);
        var lost = Dot(rest, rest) <= Rounding * size;
        return (
            whole > 0 ? lost ? 0 : Math.Clamp(remains / whole * spent, 0, 1) : null,
            lost || ownA <= 0 || ownB <= 0 ? null : Math.Clamp(remains / Math.Sqrt(ownA * ownB), -1, 1),
            size > 0 ? Math.Clamp(1 - Dot(rest, rest) / size * spent, 0, 1) : 0);
    }

    private static double[] Slopes(double[] y, List<double[]> x)
    {
        var first = Dot(x[0], x[0]);
        if (first <= 0) return x.Count == 1 ? [0] : [0, Dot(x[1], x[1]) > 0 ? Dot(x[1], y) / Dot(x[1], x[1]) : 0];
        if (x.Count == 1) return [Dot(x[0], y) / first];
        // The second test less what the first gives of it.
        var between = Dot(x[0], x[1]) / first;
        var own = Less(x[1], between, x[0]);
        var square = Dot(own, own);
        var slope = square > SameAgain * Dot(x[1], x[1]) ? Dot(own, y) / square : 0;
        return [Dot(x[0], y) / first - slope * between, slope];
    }

    private static double[] Column(IReadOnlyList<double> values, int[] rows)
    {
        var column = Array.ConvertAll(rows, r => values[r]);
        var mean = column.Average();
        for (var i = 0; i < column.Length; i++) column[i] -= mean;
        return column;
    }

    private static double[] Mean(double[] a, double[] b)
    {
        var mean = new double[a.Length];
        for (var i = 0; i < a.Length; i++) mean[i] = (a[i] + b[i]) / 2;
        return mean;
    }

    private static double[] Less(double[] from, double times, double[] what)
    {
        var rest = new double[from.Length];
        for (var i = 0; i < from.Length; i++) rest[i] = from[i] - times * what[i];
        return rest;
    }

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
