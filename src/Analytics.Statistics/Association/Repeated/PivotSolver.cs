namespace Analytics.Statistics.Association.Repeated;

/// <summary>Solves small symmetric normal equations that may lack rank: a direction the data say nothing about gets 0.</summary>
internal static class PivotSolver
{
    // What rounding leaves of a pivot that is 0: doubles hold 16 digits, and a sum over thousands of rows loses a few of them.
    private const double Nothing = 1e-10;

    /// <summary>One solution of a·s = right; exact for every right side that lies in the span of a.</summary>
    public static double[] Solve(double[,] a, double[] right)
    {
        var k = right.Length;
        var m = (double[,])a.Clone();
        var r = (double[])right.Clone();
        var kept = new bool[k];
        for (var p = 0; p < k; p++)
        {
            if (!(m[p, p] > Nothing * a[p, p])) continue;
            kept[p] = true;
            for (var row = 0; row < k; row++)
            {
                if (row == p || m[row, p] == 0) continue;
                var factor = m[row, p] / m[p, p];
                for (var column = 0; column < k; column++) m[row, column] -= factor * m[p, column];
                r[row] -= factor * r[p];
            }
        }

        for (var p = 0; p < k; p++) r[p] = kept[p] ? r[p] / m[p, p] : 0;
        return r;
    }
}
