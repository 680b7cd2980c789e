namespace Analytics.Statistics.Reliability;

/// <summary>
/// Least squares of a test on one or two others over some rows, and what of it returns. Everything follows from the products of the columns, which are summed in
/// one pass: an interval asks for thousands of sets of rows.
/// </summary>
internal sealed class RemainderParts
{
    // A second test that is the first one over again adds nothing that could be told from rounding.
    private const double SameAgain = 1e-10;

    // What is left of an exact copy is rounding, in parts of the variance.
    private const double Rounding = 1e-12;

    // The test on both occasions, then each other test on both.
    private readonly double[][] _columns;
    private readonly int _groups;

    public RemainderParts(OccasionPair test, IReadOnlyList<OccasionPair> others, int groups)
    {
        _columns = [[.. test.First], [.. test.Second], .. others.SelectMany(o => new double[][] { [.. o.First], [.. o.Second] })];
        _groups = groups;
    }

    private int Others => _columns.Length / 2 - 1;

    public double? Share(ReadOnlySpan<int> rows) => Of(rows).Share;

    public (double? Share, double? Repeats, double FromOthers) Of(ReadOnlySpan<int> rows)
    {
        var sums = Products(rows);
        var slopes = Slopes(sums);
        // What is left is the test less so many times the others: a sum over all columns with these weights.
        Span<double> weights = stackalloc double[Others + 1];
        weights[0] = 1;
        for (var k = 0; k < Others; k++) weights[k + 1] = -slopes[k];
        double remains = 0, ownA = 0, ownB = 0, rest = 0;
        for (var j = 0; j <= Others; j++)
            for (var k = 0; k <= Others; k++)
            {
                var weight = weights[j] * weights[k];
                remains += weight * sums[2 * j, 2 * k + 1];
                ownA += weight * sums[2 * j, 2 * k];
                ownB += weight * sums[2 * j + 1, 2 * k + 1];
                rest += weight * OfMeans(sums, j, k);
            }

        var df = rows.Length - _groups;
        var spent = (double)df / (df - Others);
        double whole = sums[0, 1], size = OfMeans(sums, 0, 0);
        var lost = rest <= Rounding * size;
        return (
            whole > 0 ? lost ? 0 : Math.Clamp(remains / whole * spent, 0, 1) : null,
            lost || ownA <= 0 || ownB <= 0 ? null : Math.Clamp(remains / Math.Sqrt(ownA * ownB), -1, 1),
            size > 0 ? Math.Clamp(1 - Math.Max(rest, 0) / size * spent, 0, 1) : 0);
    }

    /// <summary>Sums of products of every two columns over the rows, their means taken off.</summary>
    private double[,] Products(ReadOnlySpan<int> rows)
    {
        var count = _columns.Length;
        Span<double> means = stackalloc double[count], row = stackalloc double[count];
        for (var c = 0; c < count; c++)
        {
            foreach (var r in rows) means[c] += _columns[c][r];
            means[c] /= rows.Length;
        }

        var sums = new double[count, count];
        foreach (var r in rows)
        {
            for (var c = 0; c < count; c++) row[c] = _columns[c][r] - means[c];
            for (var c = 0; c < count; c++)
                for (var d = 0; d <= c; d++) sums[c, d] += row[c] * row[d];
        }

        for (var c = 0; c < count; c++)
            for (var d = 0; d < c; d++) sums[d, c] = sums[c, d];
        return sums;
    }

    /// <summary>Sum of products of the means of both occasions of two tests; 0 is the test itself.</summary>
    private static double OfMeans(double[,] sums, int one, int two)
        => (sums[2 * one, 2 * two] + sums[2 * one, 2 * two + 1] + sums[2 * one + 1, 2 * two] + sums[2 * one + 1, 2 * two + 1]) / 4;

    private double[] Slopes(double[,] sums)
    {
        double first = OfMeans(sums, 1, 1), y1 = OfMeans(sums, 0, 1);
        if (Others == 1) return [first > 0 ? y1 / first : 0];
        double second = OfMeans(sums, 2, 2), y2 = OfMeans(sums, 0, 2), both = OfMeans(sums, 1, 2);
        if (first <= 0) return [0, second > 0 ? y2 / second : 0];
        // The second test less what the first gives of it.
        var between = both / first;
        var square = second - between * both;
        var slope = square > SameAgain * second ? (y2 - between * y1) / square : 0;
        return [y1 / first - slope * between, slope];
    }
}
