namespace Analytics.Statistics.Fitting;

/// <summary>A small symmetric matrix, such as a covariance of parameters. Immutable.</summary>
public sealed class SymmetricMatrix
{
    private readonly double[] cells;

    // A with M = A A', where it is known: g' M g as a sum of squares can neither cancel nor turn negative.
    private readonly double[]? factor;

    internal SymmetricMatrix(int size, double[] cells, double[]? factor = null) => (Size, this.cells, this.factor) = (size, cells, factor);

    /// <summary>Makes a matrix from its cells.</summary>
    /// <param name="size">Rows, equal to columns.</param>
    /// <param name="cell">Value at (row, column); read for column ≤ row.</param>
    public static SymmetricMatrix From(int size, Func<int, int, double> cell)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(size, 1);
        ArgumentNullException.ThrowIfNull(cell);
        var cells = new double[size * size];
        for (var i = 0; i < size; i++)
            for (var j = 0; j <= i; j++)
                cells[(i * size) + j] = cells[(j * size) + i] = cell(i, j);
        return new(size, cells);
    }

    /// <summary>A A' from a square factor A.</summary>
    internal static SymmetricMatrix OfFactor(int size, double[] factor)
    {
        var cells = new double[size * size];
        for (var i = 0; i < size; i++)
            for (var j = 0; j <= i; j++)
            {
                var sum = 0.0;
                for (var m = 0; m < size; m++) sum += factor[(i * size) + m] * factor[(j * size) + m];
                cells[(i * size) + j] = cells[(j * size) + i] = sum;
            }
        return new(size, cells, factor);
    }

    /// <summary>Rows, equal to columns.</summary>
    public int Size { get; }

    /// <summary>The cell at a row and column, from 0.</summary>
    /// <param name="row">Row, from 0.</param>
    /// <param name="column">Column, from 0.</param>
    public double this[int row, int column]
        => (uint)row < (uint)Size && (uint)column < (uint)Size
            ? cells[(row * Size) + column]
            : throw new ArgumentOutOfRangeException(nameof(row), $"Row {row}, column {column} of a matrix of size {Size}.");

    /// <summary>The matrix with every cell multiplied.</summary>
    /// <param name="by">The factor, 0 or more: a covariance keeps its sign.</param>
    public SymmetricMatrix Times(double by)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(by);
        var root = Math.Sqrt(by);
        return new(Size, Array.ConvertAll(cells, c => c * by), factor is null ? null : Array.ConvertAll(factor, c => c * root));
    }

    /// <summary>Correlation between two parameters, from a covariance.</summary>
    /// <param name="row">Row, from 0.</param>
    /// <param name="column">Column, from 0.</param>
    public double Correlation(int row, int column) => this[row, column] / Math.Sqrt(this[row, row] * this[column, column]);

    /// <summary>g' M g: the variance of a quantity with gradient g (delta method), when this is a covariance.</summary>
    /// <param name="gradient">Derivatives of the quantity by the parameters, in their order.</param>
    public double QuadraticForm(ReadOnlySpan<double> gradient)
    {
        if (gradient.Length != Size)
            throw new ArgumentException($"The gradient has {gradient.Length} entries; the matrix has size {Size}.", nameof(gradient));
        var sum = 0.0;
        for (var j = 0; j < Size; j++)
        {
            var inner = 0.0;
            for (var i = 0; i < Size; i++) inner += gradient[i] * (factor ?? cells)[(i * Size) + j];
            sum += inner * (factor is null ? gradient[j] : inner);
        }
        return sum;
    }
}
