using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Fitting;

/// <summary>Ordinary least-squares line y = intercept + slope x, with everything needed to judge and to use it.</summary>
/// <remarks>
/// All sums are of deviations from the means, so that a far-off zero costs no digits; checked against the certified linear set of
/// the US National Institute of Standards and Technology [nist-strd]. Errors are taken as independent, normal, of one size, and in y only.
/// </remarks>
public sealed record StraightLine : Result
{
    private readonly double _meanX, _meanY, _squaresX;

    private StraightLine(int n, double meanX, double meanY, double squaresX, double products, double squaresY, double residualSquares)
    {
        (N, _meanX, _meanY, _squaresX) = (n, meanX, meanY, squaresX);
        Slope = products / squaresX;
        Intercept = meanY - Slope * meanX;
        ResidualSquares = residualSquares;
        TotalSquares = squaresY;
        Correlation = squaresY > 0 ? Math.Clamp(products / Math.Sqrt(squaresX * squaresY), -1, 1) : null;
    }

    /// <summary>Points used.</summary>
    public int N { get; }

    /// <summary>Change of y for one unit of x.</summary>
    public double Slope { get; }

    /// <summary>y at x = 0, however far that is from the data.</summary>
    public double Intercept { get; }

    /// <summary>Sum of squared vertical distances from the line.</summary>
    public double ResidualSquares { get; }

    /// <summary>Sum of squared distances of y from its mean.</summary>
    public double TotalSquares { get; }

    /// <summary>Pearson's correlation of x and y; null when y does not vary.</summary>
    public double? Correlation { get; }

    /// <summary>Points less the two parameters.</summary>
    public int DegreesOfFreedom => N - 2;

    /// <summary>Residual mean square.</summary>
    public double ResidualMeanSquare => ResidualSquares / DegreesOfFreedom;

    /// <summary>SD of the points about the line, in the unit of y.</summary>
    public double ResidualStandardDeviation => Math.Sqrt(ResidualMeanSquare);

    /// <summary>Standard error of the slope.</summary>
    public double SlopeError => ResidualStandardDeviation / Math.Sqrt(_squaresX);

    /// <summary>Standard error of the intercept.</summary>
    public double InterceptError => ResidualStandardDeviation * Math.Sqrt(1.0 / N + _meanX * _meanX / _squaresX);

    /// <summary>Share of the squares of y that the line takes up; null when y does not vary.</summary>
    public double? RSquared => TotalSquares > 0 ? 1 - ResidualSquares / TotalSquares : null;

    /// <summary>(slope/SE)²; infinite when the line passes through every point, null when y does not vary.</summary>
    public double? F => TotalSquares > 0 ? Slope * Slope * _squaresX / ResidualMeanSquare : null;

    /// <summary>Probability of a slope at least this far from 0 when there is none; null when y does not vary.</summary>
    public double? P => F switch
    {
        null => null,
        double.PositiveInfinity => 0,
        // The lower tail keeps its digits where 1 − Cdf would lose them.
        { } f => 2 * StudentLaw.Cdf(-Math.Sqrt(f), DegreesOfFreedom),
    };

    /// <summary>Fits the line.</summary>
    /// <param name="x">At least three finite values, not all equal.</param>
    /// <param name="y">As many finite values, in the same order.</param>
    /// <exception cref="ArgumentException">Too few points, lists of different length, a value that is not finite, or no spread in x.</exception>
    public static StraightLine Of(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        Require.Sample(x, 3, nameof(x));
        Require.Sample(y, 3, nameof(y));
        if (x.Count != y.Count) throw new ArgumentException($"{x.Count} values of x but {y.Count} of y; every point needs both.", nameof(y));
        double meanX = Summaries.Moments.Mean(x), meanY = Summaries.Moments.Mean(y);
        double xx = 0, xy = 0, yy = 0;
        for (var i = 0; i < x.Count; i++)
        {
            double dx = x[i] - meanX, dy = y[i] - meanY;
            xx += dx * dx;
            xy += dx * dy;
            yy += dy * dy;
        }

        if (xx <= 0) throw new ArgumentException(FormattableString.Invariant($"All {x.Count} values of x are {x[0]}; a line needs different ones."), nameof(x));
        var slope = xy / xx;
        double rest = 0;
        for (var i = 0; i < x.Count; i++)
        {
            var r = y[i] - meanY - slope * (x[i] - meanX);
            rest += r * r;
        }

        return new(x.Count, meanX, meanY, xx, xy, yy, rest);
    }

    /// <summary>y on the line.</summary>
    /// <param name="x">Any finite value; beyond the data it is a guess.</param>
    public double At(double x) => _meanY + Slope * (Require.Finite(x, nameof(x)) - _meanX);

    /// <summary>Vertical distance of a point from the line, in the unit of y.</summary>
    /// <param name="x">Its x.</param>
    /// <param name="y">Its y.</param>
    public double Residual(double x, double y) => Require.Finite(y, nameof(y)) - At(x);

    /// <summary>Slope with Student's t interval.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Estimate SlopeEstimate(double level = 0.95) => Estimated(Slope, SlopeError, level, "least-squares slope");

    /// <summary>Intercept with Student's t interval.</summary>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Estimate InterceptEstimate(double level = 0.95) => Estimated(Intercept, InterceptError, level, "least-squares intercept");

    /// <summary>Mean of y for all with this x, with its interval.</summary>
    /// <param name="x">Any finite value.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Estimate MeanAt(double x, double level = 0.95) => Estimated(At(x), ResidualStandardDeviation * Math.Sqrt(Spread(x)), level, "mean on the line");

    /// <summary>One new y at this x, with the interval it should fall in.</summary>
    /// <param name="x">Any finite value.</param>
    /// <param name="level">Coverage, above 0 and below 1.</param>
    public Estimate NewValueAt(double x, double level = 0.95) => Estimated(At(x), ResidualStandardDeviation * Math.Sqrt(1 + Spread(x)), level, "new value about the line");

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Straight line", "ordinary least squares; errors in y only",
        [
            Line("slope", SlopeEstimate()),
            Line("intercept", InterceptEstimate()),
            new("residual SD", ResidualStandardDeviation) { DegreesOfFreedom = DegreesOfFreedom },
            new("R²", RSquared),
            new("correlation", Correlation),
            new("F", F) { DegreesOfFreedom = DegreesOfFreedom },
            new("p of no slope", P),
        ])
    {
        Basis = $"{N} points",
        Remarks = TotalSquares > 0 ? [] : ["All values of y are equal: there is nothing for a line to explain."],
    };

    private double Spread(double x) => 1.0 / N + (x - _meanX) * (x - _meanX) / _squaresX;

    private Estimate Estimated(double value, double error, double level, string method)
    {
        var reach = StudentLaw.TwoSided(level, DegreesOfFreedom) * error;
        return new(value, error, new(value - reach, value + reach, level), N, method);
    }

    private ResultLine Line(string name, Estimate e)
        => new(name, e.Value) { StandardError = e.StandardError, Interval = e.Interval, DegreesOfFreedom = DegreesOfFreedom };
}
