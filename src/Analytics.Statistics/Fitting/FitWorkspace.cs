namespace Analytics.Statistics.Fitting;

/// <summary>The working memory of one fit: views into one block, so that the loop allocates nothing.</summary>
internal readonly ref struct FitWorkspace
{
    private readonly int p;

    public FitWorkspace(Span<double> memory, int n, int p)
    {
        this.p = p;
        var rest = memory;
        Jacobian = Take(ref rest, n * p);
        TrialResiduals = Take(ref rest, n);
        Residuals = Take(ref rest, n);
        Upper = Take(ref rest, p * p);
        Projected = Take(ref rest, p);
        Current = Take(ref rest, p);
        Trial = Take(ref rest, p);
        Step = Take(ref rest, p);
        Scale = Take(ref rest, p);
        ColumnLength = Take(ref rest, p);
        Solve = Take(ref rest, (p * p) + (2 * p));
    }

    /// <summary>Cells needed for n points and p parameters.</summary>
    public static int Cells(int n, int p) => (n * p) + (2 * n) + (2 * p * p) + (8 * p);

    public Span<double> Jacobian { get; }

    public Span<double> TrialResiduals { get; }

    public Span<double> Residuals { get; }

    /// <summary>R of the accepted Jacobian, its columns divided by <see cref="Scale"/>.</summary>
    public Span<double> Upper { get; }

    /// <summary>First p entries of Q' times the accepted residuals.</summary>
    public Span<double> Projected { get; }

    public Span<double> Current { get; }

    public Span<double> Trial { get; }

    /// <summary>Step in scaled parameters.</summary>
    public Span<double> Step { get; }

    public Span<double> Scale { get; }

    public Span<double> ColumnLength { get; }

    public Span<double> Solve { get; }

    /// <summary>
    /// Makes the trial point the current one: keeps its residuals, scales and triangularises its Jacobian.
    /// A parameter on a bound with the descent direction pointing outside is held there by clearing its column.
    /// </summary>
    /// <returns>Whether any parameter is held.</returns>
    public bool Accept(FitOptions options)
    {
        var n = Residuals.Length;
        TrialResiduals.CopyTo(Residuals);
        var held = false;
        for (var j = 0; j < p; j++)
        {
            var (square, descent) = (0.0, 0.0);
            for (var i = 0; i < n; i++)
            {
                square += Jacobian[(i * p) + j] * Jacobian[(i * p) + j];
                descent += Jacobian[(i * p) + j] * Residuals[i];
            }
            var hold = (options.Lower is { } lower && Current[j] <= lower[j] && descent < 0)
                    || (options.Upper is { } upper && Current[j] >= upper[j] && descent > 0);
            held |= hold;
            ColumnLength[j] = hold ? 0 : Math.Sqrt(square);
            Scale[j] = Math.Max(Scale[j], Math.Sqrt(square));
            var factor = hold || Scale[j] == 0 ? 0 : 1 / Scale[j];
            for (var i = 0; i < n; i++) Jacobian[(i * p) + j] *= factor;
            if (Scale[j] == 0) Scale[j] = 1;
        }
        OrthogonalSolver.Triangularise(Jacobian, TrialResiduals, p);
        Jacobian[..(p * p)].CopyTo(Upper);
        TrialResiduals[..p].CopyTo(Projected);
        return held;
    }

    /// <summary>Largest cosine between the residuals and a free column of the Jacobian; 0 when the residuals vanish.</summary>
    public double LargestCosine(double rss)
    {
        if (rss == 0) return 0;
        var largest = 0.0;
        for (var j = 0; j < p; j++)
        {
            if (ColumnLength[j] == 0) continue;
            var dot = 0.0;
            for (var i = 0; i <= j; i++) dot += Upper[(i * p) + j] * Projected[i];
            largest = Math.Max(largest, Math.Abs(dot) * Scale[j] / ColumnLength[j]);
        }
        return largest / Math.Sqrt(rss);
    }

    /// <summary>
    /// Fall of the residual sum of squares that the derivatives promise for the free parameters, as good as undamped:
    /// at a least-squares solution next to nothing of the sum (Bates and Watts' relative offset, squared). Changes <see cref="Step"/>.
    /// </summary>
    public double Promise()
    {
        const double BarelyDamped = 1e-16;
        OrthogonalSolver.SolveDamped(Upper, Projected, BarelyDamped, Solve, Step);
        return PredictedReduction(BarelyDamped);
    }

    /// <summary>Fall of the residual sum of squares that the linear model promises for <see cref="Step"/>.</summary>
    public double PredictedReduction(double damping)
    {
        // |c|² - |c - R d|² = |R d|² + 2·damping·|d|² at the damped solution.
        var sum = 0.0;
        for (var i = 0; i < p; i++)
        {
            var row = 0.0;
            for (var j = i; j < p; j++) row += Upper[(i * p) + j] * Step[j];
            sum += (row * row) + (2 * damping * Step[i] * Step[i]);
        }
        return sum;
    }

    private static Span<double> Take(scoped ref Span<double> rest, int length)
    {
        var taken = rest[..length];
        rest = rest[length..];
        return taken;
    }
}
