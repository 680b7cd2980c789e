namespace Analytics.Statistics.MixedModels.Algebra;

/// <summary>Householder triangularisation of the first columns of a block, the rest carried along. Source: [golub2013, ch. 5].</summary>
internal static class Householder
{
    /// <summary>Turns the first <paramref name="leading"/> of <paramref name="columns"/> columns upper triangular with a diagonal ≥ 0, in place, row by row.</summary>
    public static void Triangularise(Span<double> a, int rows, int columns, int leading)
    {
        for (var k = 0; k < Math.Min(rows, leading); k++)
        {
            var norm = 0.0;
            for (var i = k; i < rows; i++) norm += a[(i * columns) + k] * a[(i * columns) + k];
            norm = Math.Sqrt(norm);
            if (norm > 0 && k < rows - 1) Reflect(a, rows, columns, k, norm);
            // One sign for all groups, so that groups of one design come out equal to the bit.
            if (a[(k * columns) + k] < 0)
                for (var j = k; j < columns; j++) a[(k * columns) + j] = -a[(k * columns) + j];
            for (var i = k + 1; i < rows; i++) a[(i * columns) + k] = 0;
        }
    }

    private static void Reflect(Span<double> a, int rows, int columns, int k, double norm)
    {
        var head = a[(k * columns) + k];
        var diagonal = head > 0 ? -norm : norm;
        head -= diagonal;
        var factor = -1 / (diagonal * head);
        for (var j = k + 1; j < columns; j++)
        {
            var dot = head * a[(k * columns) + j];
            for (var i = k + 1; i < rows; i++) dot += a[(i * columns) + k] * a[(i * columns) + j];
            dot *= factor;
            a[(k * columns) + j] -= dot * head;
            for (var i = k + 1; i < rows; i++) a[(i * columns) + j] -= dot * a[(i * columns) + k];
        }

        a[(k * columns) + k] = diagonal;
    }
}
