using System.Buffers;

namespace Analytics.Statistics.Fitting;

/// <summary>
/// Unweighted non-linear least squares by damped Gauss-Newton steps: Levenberg-Marquardt with columns scaled by their
/// largest length so far (Moré), orthogonal elimination, analytic derivatives and simple bounds by projection. A step so small
/// that it could be the last one is believed only where the derivatives promise no more than rounding.
/// Made for small problems; the loop itself allocates nothing. Sources: [marquardt1963], [more1978], [nielsen1999], [bateswatts1981].
/// </summary>
public static class LevenbergMarquardt
{
    /// <summary>Fits a model to points.</summary>
    /// <typeparam name="TModel">A struct, so that the compiler can inline it.</typeparam>
    /// <param name="model">The curve.</param>
    /// <param name="x">Abscissas, finite.</param>
    /// <param name="y">Observations, finite, as many as abscissas.</param>
    /// <param name="start">Start values, finite, one per parameter; moved inside the bounds if outside.</param>
    /// <param name="options">Tolerances and bounds; null for the defaults.</param>
    /// <returns>A complete result, also when the fit failed: read <see cref="NonlinearFit.Ending"/>.</returns>
    /// <exception cref="ArgumentException">Lengths that do not agree, a number that is not finite, or bounds the wrong way round.</exception>
    public static NonlinearFit Fit<TModel>(
        in TModel model, ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> start, FitOptions? options = null)
        where TModel : struct, IFitModel
    {
        options ??= FitOptions.Default;
        var p = model.ParameterCount;
        FitArguments.Check(x, y, start, p, options);
        if (x.Length < p) return NotStarted(FitEnding.TooFewPoints, start, x.Length, 0);

        var cells = FitWorkspace.Cells(x.Length, p);
        if (cells <= 512)
        {
            Span<double> memory = stackalloc double[cells];
            return Run(in model, x, y, start, options, memory);
        }
        var rented = ArrayPool<double>.Shared.Rent(cells);
        try
        {
            return Run(in model, x, y, start, options, rented.AsSpan(0, cells));
        }
        finally
        {
            ArrayPool<double>.Shared.Return(rented);
        }
    }

    private static NonlinearFit Run<TModel>(
        in TModel model, ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> start, FitOptions options, Span<double> memory)
        where TModel : struct, IFitModel
    {
        var p = start.Length;
        memory.Clear();
        var w = new FitWorkspace(memory, x.Length, p);
        start.CopyTo(w.Current);
        Clamp(w.Current, options);

        var rss = Evaluate(in model, x, y, w.Current, w.Jacobian, w.TrialResiduals);
        if (!double.IsFinite(rss)) return NotStarted(FitEnding.StartOutsideModel, w.Current, x.Length, 1);
        List<FitIterate>? iterates = options.KeepIterates ? [new(0, w.Current.ToArray(), rss, 0)] : null;
        var active = w.Accept(options);

        var settled = Settled.For(y, options.StepTolerance);
        var (damping, growth) = (options.StartDamping, 2.0);
        var ending = FitEnding.IterationLimit;
        int iteration = 0, evaluations = 1;
        while (true)
        {
            if (w.LargestCosine(rss) <= options.GradientTolerance) { ending = FitEnding.Converged; break; }
            if (iteration == options.MaxIterations) break;
            iteration++;

            OrthogonalSolver.SolveDamped(w.Upper, w.Projected, damping, w.Solve, w.Step);
            var predicted = w.PredictedReduction(damping);
            for (var j = 0; j < p; j++) w.Trial[j] = w.Current[j] + (w.Step[j] / w.Scale[j]);
            Clamp(w.Trial, options);
            var small = IsSmall(w.Current, w.Trial, options.StepTolerance);

            var trialRss = Evaluate(in model, x, y, w.Trial, w.Jacobian, w.TrialResiduals);
            evaluations++;
            var gain = predicted > 0 ? (rss - trialRss) / predicted : 0;
            // Where the promised reduction is below the rounding of the sum itself, a step is judged by its size, not by the sum.
            var belowRounding = predicted <= 1e-13 * rss && trialRss <= rss * (1 + 1e-12);
            if (double.IsFinite(trialRss) && (trialRss < rss || belowRounding))
            {
                rss = trialRss;
                w.Trial.CopyTo(w.Current);
                active = w.Accept(options);
                iterates?.Add(new(iteration, w.Current.ToArray(), rss, damping));
                damping = Math.Max(1e-18, damping * Shrink(belowRounding ? 1 : gain));
                growth = 2;
                // Heavy damping makes a step small anywhere.
                if (small && settled.Holds(in w, rss)) { ending = FitEnding.Converged; break; }
                continue;
            }

            if (small)
            {
                ending = settled.Holds(in w, rss) ? FitEnding.LimitOfArithmetic
                    : double.IsFinite(trialRss) ? FitEnding.DerivativesDisagree : FitEnding.EdgeOfModel;
                break;
            }
            damping *= growth;
            growth *= 2;
        }
        return Finish(w, x.Length, rss, ending, active, iteration, evaluations, iterates);
    }

    // A step that did what was promised earns a tenfold smaller damping or more; a poor one keeps or raises it (after Nielsen).
    private static double Shrink(double gain)
        => gain > 0.95 ? 0.02 : Math.Max(0.1, 1 - Math.Pow((2 * gain) - 1, 3));

    private static NonlinearFit Finish(
        FitWorkspace w, int n, double rss, FitEnding ending, bool active, int iterations, int evaluations, List<FitIterate>? iterates)
    {
        var p = w.Current.Length;
        double[]? factor = null;
        double? condition = null;
        if (ending.IsSolution())
        {
            if (active) ending = FitEnding.OnBound;
            else if ((factor = OrthogonalSolver.InverseFactor(w.Upper, w.Scale)) is null) ending = FitEnding.NotIdentified;
            else condition = Condition(factor, w.ColumnLength);
        }
        return new()
        {
            Ending = ending,
            Parameters = w.Current.ToArray(),
            Residuals = w.Residuals.ToArray(),
            Rss = rss,
            N = n,
            DegreesOfFreedom = n - p,
            UnscaledCovariance = factor is null ? null : SymmetricMatrix.OfFactor(p, factor),
            Condition = condition,
            Iterations = iterations,
            Evaluations = evaluations,
            Iterates = iterates ?? (IReadOnlyList<FitIterate>)[],
        };
    }

    // ‖J D⁻¹‖ ‖(J D⁻¹)⁻¹‖ / p in Frobenius norms, D the column lengths: 1 for columns at right angles.
    private static double Condition(double[] factor, ReadOnlySpan<double> columnLength)
    {
        var p = columnLength.Length;
        var sum = 0.0;
        for (var i = 0; i < p; i++)
            for (var j = i; j < p; j++) sum += factor[(i * p) + j] * factor[(i * p) + j] * columnLength[i] * columnLength[i];
        return Math.Sqrt(sum / p);
    }

    private static double Evaluate<TModel>(
        in TModel model, ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> parameters, Span<double> jacobian, Span<double> residuals)
        where TModel : struct, IFitModel
    {
        var p = parameters.Length;
        var (sum, gradientSum) = (0.0, 0.0);
        for (var i = 0; i < x.Length; i++)
        {
            var gradient = jacobian.Slice(i * p, p);
            var residual = y[i] - model.Evaluate(x[i], parameters, gradient);
            residuals[i] = residual;
            sum += residual * residual;
            foreach (var derivative in gradient) gradientSum += derivative * 0; // 0 unless a derivative is not finite
        }
        return sum + gradientSum;
    }

    private static bool IsSmall(ReadOnlySpan<double> from, ReadOnlySpan<double> to, double tolerance)
    {
        for (var j = 0; j < from.Length; j++)
            if (Math.Abs(to[j] - from[j]) > tolerance * (Math.Abs(from[j]) + tolerance)) return false;
        return true;
    }

    private static void Clamp(Span<double> parameters, FitOptions options)
    {
        if (options.Lower is { } lower)
            for (var j = 0; j < parameters.Length; j++) parameters[j] = Math.Max(parameters[j], lower[j]);
        if (options.Upper is { } upper)
            for (var j = 0; j < parameters.Length; j++) parameters[j] = Math.Min(parameters[j], upper[j]);
    }

    private static NonlinearFit NotStarted(FitEnding ending, ReadOnlySpan<double> start, int n, int evaluations) => new()
    {
        Ending = ending,
        Parameters = start.ToArray(),
        Residuals = [],
        Rss = null,
        N = n,
        DegreesOfFreedom = n - start.Length,
        UnscaledCovariance = null,
        Condition = null,
        Iterations = 0,
        Evaluations = evaluations,
    };
}
