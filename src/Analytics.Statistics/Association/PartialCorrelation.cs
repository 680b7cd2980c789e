using Analytics.Statistics.Results;
using MathNet.Numerics.LinearAlgebra;

namespace Analytics.Statistics.Association;

/// <summary>What is left of a correlation when both columns are predicted from others by least squares, and what the predictions alone give [fisher1924].</summary>
public sealed record PartialCorrelation : Result
{
    private PartialCorrelation()
    {
    }

    /// <summary>Correlation of what the others do not predict.</summary>
    public required double Value { get; init; }

    /// <summary>Interval on Fisher's scale with n − number of the others for n; null with too few athletes or at exactly ±1.</summary>
    public required Interval? Interval { get; init; }

    /// <summary>Correlation of the columns as they are.</summary>
    public required double Whole { get; init; }

    /// <summary>The part of <see cref="Whole"/> the predictions give: their covariance over the SDs of the columns.</summary>
    public required double FromOthers { get; init; }

    /// <summary>Share of the variance of x that is left.</summary>
    public required double LeftX { get; init; }

    /// <summary>Share of the variance of y that is left.</summary>
    public required double LeftY { get; init; }

    /// <summary>Rows.</summary>
    public required int N { get; init; }

    /// <summary>Number of the others.</summary>
    public required int Others { get; init; }

    /// <summary>From columns of equal length.</summary>
    /// <param name="x">Finite values, more than the others plus 2.</param>
    /// <param name="y">The other value of each pair.</param>
    /// <param name="others">The columns to predict from; those that say the same as others count for nothing.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    public static PartialCorrelation Of(IReadOnlyList<double> x, IReadOnlyList<double> y, IReadOnlyList<IReadOnlyList<double>> others, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(others);
        Paired.Require(x, y, 3);
        Paired.Varies(x, nameof(x), "a correlation");
        Paired.Varies(y, nameof(y), "a correlation");
        Require.Share(level, nameof(level));
        foreach (var column in others)
        {
            Require.Sample(column ?? throw new ArgumentException("A column of others is null; leave it out.", nameof(others)), 3, nameof(others));
            Paired.SameLength(x, column, nameof(others));
        }

        var n = x.Count;
        if (n < others.Count + 3)
            throw new ArgumentException(FormattableString.Invariant($"{n} rows and {others.Count} others; at least {others.Count + 3} rows are needed."), nameof(x));
        var basis = Basis(others, n);
        double[] restX = Rest(x, basis), restY = Rest(y, basis);
        var (whole, left) = (Paired.Sums(x, y), Paired.Sums(restX, restY));
        // An SD under 1e-9 of the whole, the bound of the basis below.
        if (!(left.XX > 1e-18 * whole.XX && left.YY > 1e-18 * whole.YY))
            throw new ArgumentException("The others predict x or y exactly; nothing is left to correlate.", nameof(others));
        var r = left.Correlation;
        return new()
        {
            Value = r,
            Interval = FisherInterval.Of(r, n - basis.Count, level),
            Whole = whole.Correlation,
            FromOthers = (whole.XY - left.XY) / Math.Sqrt(whole.XX) / Math.Sqrt(whole.YY),
            LeftX = left.XX / whole.XX,
            LeftY = left.YY / whole.YY,
            N = n,
            Others = basis.Count,
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Correlation beyond what others predict", "partial correlation [fisher1924], interval on Fisher's scale",
        [new("partial correlation", Value) { Interval = Interval }, new("correlation", Whole), new("of which from the others", FromOthers)])
    { Basis = FormattableString.Invariant($"{N} rows, {Others} other columns") };

    // Orthonormal columns that span the others about their means (Gram and Schmidt, twice for the last digits).
    private static List<Vector<double>> Basis(IReadOnlyList<IReadOnlyList<double>> others, int n)
    {
        var basis = new List<Vector<double>>();
        foreach (var column in others)
        {
            var mean = column.Average();
            var v = Vector<double>.Build.Dense(n, i => column[i] - mean);
            var (size, scale) = (v.L2Norm(), column.Max(Math.Abs) * Math.Sqrt(n));
            for (var pass = 0; pass < 2; pass++)
            {
                foreach (var b in basis) v -= b * v.DotProduct(b);
            }

            var length = v.L2Norm();
            // Less than this of a column is what rounding leaves of one the others hold already, or of a constant.
            if (length > 1e-9 * size && length > 1e-13 * scale) basis.Add(v / length);
        }

        return basis;
    }

    private static double[] Rest(IReadOnlyList<double> values, List<Vector<double>> basis)
    {
        var mean = values.Average();
        var v = Vector<double>.Build.Dense(values.Count, i => values[i] - mean);
        foreach (var b in basis) v -= b * v.DotProduct(b);
        return v.ToArray();
    }
}
