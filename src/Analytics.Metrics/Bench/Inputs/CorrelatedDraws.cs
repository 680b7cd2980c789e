using Analytics.Statistics.Resampling;

namespace Analytics.Metrics.Bench.Inputs;

/// <summary>Standard normal errors of several inputs that go together.</summary>
internal sealed class CorrelatedDraws
{
    private readonly double[,] _root;

    /// <summary>Takes the correlations; where they contradict each other they are drawn toward 0 until they do not.</summary>
    public CorrelatedDraws(double[,] correlations)
    {
        var n = correlations.GetLength(0);
        for (var shrink = 1.0; ; shrink *= 0.9)
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
                if (i != j) root[i, j] = sum / root[j, j];
                else if (sum > 1e-9) root[i, i] = Math.Sqrt(sum);
                else return null;
            }

        return root;
    }
}
