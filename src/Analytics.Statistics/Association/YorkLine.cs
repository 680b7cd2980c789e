using Analytics.Statistics.Results;

namespace Analytics.Statistics.Association;

/// <summary>A straight line when each value has its own known error in x and in y [york2004].</summary>
public sealed record YorkLine : Result
{
    private const int MostSteps = 500;

    private YorkLine()
    {
    }

    /// <summary>Units of y per unit of x.</summary>
    public required double Slope { get; init; }

    /// <summary>y at x = 0.</summary>
    public required double Intercept { get; init; }

    /// <summary>Standard error of the slope when the errors given are right.</summary>
    public required double SlopeError { get; init; }

    /// <summary>Standard error of the intercept when the errors given are right.</summary>
    public required double InterceptError { get; init; }

    /// <summary>Weighted squares left over, S; about n − 2 when the errors given are right.</summary>
    public required double Squares { get; init; }

    /// <summary>S/(n − 2); well above 1 says that the points scatter more than the errors given allow. Null with two points.</summary>
    public double? ReducedSquares => N > 2 ? Squares / (N - 2) : null;

    /// <summary>Standard error of the slope times √(S/(n − 2)), for errors known only up to a factor; null with two points.</summary>
    public double? ScaledSlopeError => SlopeError * Root;

    /// <summary>The same of the intercept.</summary>
    public double? ScaledInterceptError => InterceptError * Root;

    /// <summary>Points.</summary>
    public required int N { get; init; }

    /// <summary>Steps of the iteration.</summary>
    public required int Steps { get; init; }

    private double? Root => ReducedSquares is { } r ? Math.Sqrt(r) : null;

    /// <summary>Fits the line.</summary>
    /// <param name="x">At least two finite values, not all equal.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="weightX">1/variance of the error of each x, above 0.</param>
    /// <param name="weightY">1/variance of the error of each y, above 0.</param>
    /// <exception cref="InvalidOperationException">The iteration does not settle: the errors given leave no slope to be seen.</exception>
    public static YorkLine Of(IReadOnlyList<double> x, IReadOnlyList<double> y, IReadOnlyList<double> weightX, IReadOnlyList<double> weightY)
    {
        Paired.Require(x, y, 2);
        Paired.Varies(x, nameof(x), "a line");
        Weights(weightX, x, nameof(weightX));
        Weights(weightY, x, nameof(weightY));
        var start = Paired.Sums(x, y);
        var slope = start.XY / start.XX;
        for (var step = 1; step <= MostSteps; step++)
        {
            var at = YorkStep.At(x, y, weightX, weightY, slope);
            if (!double.IsFinite(at.Next)) break;
            var settled = Math.Abs(at.Next - slope) <= 1e-15 * Math.Abs(at.Next);
            // Rounding may keep the last digit moving to and fro.
            if (settled || (step > 100 && Math.Abs(at.Next - slope) <= 1e-12 * Math.Abs(at.Next))) return Finish(YorkStep.At(x, y, weightX, weightY, at.Next), at.Next, step);
            slope = at.Next;
        }

        throw new InvalidOperationException($"The line does not settle in {MostSteps} steps; the errors given are too large against the spread of the {x.Count} points. Check the weights (1/variance).");
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Line with known errors of each value", "York, standard errors of 2004 [york2004]",
    [
        new("slope", Slope) { StandardError = SlopeError },
        new("intercept", Intercept) { StandardError = InterceptError },
        new("S/(n - 2)", ReducedSquares),
        new("slope, errors scaled", N > 2 ? Slope : null) { StandardError = ScaledSlopeError },
        new("intercept, errors scaled", N > 2 ? Intercept : null) { StandardError = ScaledInterceptError },
    ])
    {
        Basis = FormattableString.Invariant($"{N} points with an error each in x and y"),
        Remarks = ["Take the scaled errors when the weights are known only up to a factor."],
    };

    private static YorkLine Finish(YorkStep at, double slope, int steps) => new()
    {
        Slope = slope,
        Intercept = at.MeanY - slope * at.MeanX,
        SlopeError = at.SlopeError,
        InterceptError = at.InterceptError,
        Squares = at.Squares,
        N = at.N,
        Steps = steps,
    };

    private static void Weights(IReadOnlyList<double> weights, IReadOnlyList<double> x, string name)
    {
        Require.Sample(weights, 2, name);
        Paired.SameLength(x, weights, name);
        for (var i = 0; i < weights.Count; i++)
        {
            if (weights[i] <= 0)
                throw new ArgumentException(FormattableString.Invariant($"{name}[{i}] is {weights[i]}; a weight is 1/variance and above 0. Leave a value without error information out."), name);
        }
    }
}
