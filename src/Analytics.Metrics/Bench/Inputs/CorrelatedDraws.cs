using Analytics.Statistics.Resampling;

namespace Analytics.Metrics.Bench.Inputs;

/// <summary>Standard normal errors of several inputs that go together.</summary>
internal sealed class CorrelatedDraws
{
    private readonly double[,] _root;

    // Correlations come with rounding of this size at most.
    private const double Rounding = 1e-9;

    /// <summary>Takes the correlations, 1 and −1 too; where they contradict each other they are drawn toward 0 until they do not.</summary>
    public CorrelatedDraws(double[,] correlations)
    {
        var n = correlations.GetLength(0);
        for (var shrink = 1.0; ; shrink *= 0.98)
        {
            if (Root(correlations, n, shrink) is not { } root) continue;
            _root = root;
            return;
        }
    }

    public double[] Next(NormalDraws draws)
    {
        var n = _root.GetLength(0);
        var z = new double[n];
        for (var i = 0; i < n; i++) z[i] = draws.Next();
        var errors = new double[n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j <= i; j++) errors[i] += _root[i, j] * z[j];
        return errors;
    }

    private static double[,]? Root(double[,] of, int n, double shrink)
    {
        var root = new double[n, n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j <= i; j++)
            {
                var sum = i == j ? 1 : of[i, j] * shrink;
                for (var k = 0; k < j; k++) sum -= root[i, k] * root[j, k];
                // An error that others give altogether has nothing of its own, and nothing more can go with it.
                if (i == j && sum > -Rounding) root[i, i] = sum > Rounding ? Math.Sqrt(sum) : 0;
                else if (i != j && root[j, j] > 0) root[i, j] = sum / root[j, j];
                else if (i == j || Math.Abs(sum) > Math.Sqrt(Rounding)) return null;
            }

        return root;
    }
}
