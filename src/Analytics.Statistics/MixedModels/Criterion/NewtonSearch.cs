using Analytics.Statistics.MixedModels.Algebra;

namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>How a search ended.</summary>
internal sealed record SearchEnd(double[] X, double Value, int Iterations, bool Converged, double[] Hessian);

/// <summary>
/// Newton's method with exact second derivatives: curvatures are taken by size, so every step leads downhill, and are bounded from below;
/// a step that does not lower the value is halved. Near the minimum the steps are pure Newton and the digits double.
/// </summary>
internal static class NewtonSearch
{
    private const int Limit = 200;

    public static SearchEnd Minimise(IObjective objective, double[] start)
    {
        var n = objective.Count;
        var x = (double[])start.Clone();
        var value = objective.Value(x);
        if (n == 0 || double.IsInfinity(value)) return new(x, value, 0, !double.IsInfinity(value), []);
        var settled = 0;
        for (var iteration = 1; iteration <= Limit; iteration++)
        {
            var (gradient, hessian) = objective.Derivatives(x);
            // Every variable in its own size: one spread may be 10,000 times another.
            var size = Array.ConvertAll(x, v => Math.Max(1, Math.Abs(v)));
            var eigen = SymmetricEigen.Of(Scaled(hessian, size), n);
            var floor = Math.Max(1e-7 * eigen.Values.Max(Math.Abs), 1e-12);
            double[] step = eigen.Apply(v => -1 / Math.Max(Math.Abs(v), floor), [.. gradient.Zip(size, (g, s) => g * s)]);
            var length = Math.Sqrt(Dot(step, step));
            for (var i = 0; i < n; i++) step[i] *= size[i];
            var promise = -Dot(gradient, step);
            if (promise < 1e-20 || length < 1e-14)
            {
                // A pass or a top looks as flat as a bottom: leave it along the direction that falls.
                if (!Tip(objective, eigen, floor, size, x, ref value)) return new(x, value, iteration, true, hessian);
                continue;
            }

            var before = value;
            if (!TakeStep(objective, x, step, Math.Min(1, 3 / length), promise, ref value))
                return new(x, value, iteration, promise < 1e-7 * (1 + Math.Abs(value)), hessian);
            // Rounding keeps the promise above 0 at times. Steps that double the digits need no more than a few once the value stands still.
            settled = promise < 1e-7 && before - value < 1e-11 * (1 + Math.Abs(value)) ? settled + 1 : 0;
            if (settled == 8 || (settled >= 2 && promise < 1e-15)) return new(x, value, iteration, true, objective.Derivatives(x).Hessian);
        }

        return new(x, value, Limit, false, []);
    }

    private static bool TakeStep(IObjective objective, double[] x, double[] step, double share, double promise, ref double value)
    {
        // Below this the value cannot show progress in double precision; the derivatives still can.
        var noise = 1e-11 * (1 + Math.Abs(value));
        for (var half = 0; half < 60; half++, share /= 2)
        {
            var next = x.Zip(step, (a, b) => a + (share * b)).ToArray();
            var reached = objective.Value(next);
            if (!(reached <= value - (1e-4 * share * promise) + (promise < noise ? noise : 0))) continue;
            next.CopyTo(x, 0);
            value = reached;
            return true;
        }

        value = objective.Value(x);
        return false;
    }

    private static bool Tip(IObjective objective, SymmetricEigen eigen, double floor, double[] unit, double[] x, ref double value)
    {
        var lowest = Array.IndexOf(eigen.Values, eigen.Values.Min());
        if (eigen.Values[lowest] > -10 * floor) return false;
        foreach (var size in new[] { 0.3, -0.3, 0.01, -0.01 })
        {
            var next = x.Select((a, i) => a + (size * unit[i] * eigen.Vectors[(i * x.Length) + lowest])).ToArray();
            var reached = objective.Value(next);
            if (!(reached < value - 1e-12)) continue;
            next.CopyTo(x, 0);
            value = reached;
            return true;
        }

        value = objective.Value(x);
        return false;
    }

    private static double[] Scaled(double[] hessian, double[] size)
    {
        var n = size.Length;
        var scaled = new double[n * n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++) scaled[(i * n) + j] = hessian[(i * n) + j] * size[i] * size[j];
        return scaled;
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
