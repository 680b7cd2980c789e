namespace Analytics.Statistics.Fitting;

/// <summary>Tells a least-squares solution from a place where the steps have merely become small.</summary>
/// <param name="Share">Part of the residual sum of squares that the derivatives may still promise.</param>
/// <param name="DataLength">Length of y as a vector.</param>
internal readonly record struct Settled(double Share, double DataLength)
{
    // 1e-10 of the sum: the parameters lie within 1e-5 of a standard error (at 1 df) of where the derivatives point.
    private const double LeastShare = 1e-10;

    // Some hundred times the rounding of one number: models lose digits on their way to y.
    private const double Rounding = 1e-13;

    public static Settled For(ReadOnlySpan<double> y, double stepTolerance)
    {
        var square = 0.0;
        foreach (var value in y) square += value * value;
        return new(Math.Max(LeastShare, stepTolerance * stepTolerance), Math.Sqrt(square));
    }

    /// <summary>Whether the accepted parameters are as good as the arithmetic can tell. Changes the step of the workspace.</summary>
    public bool Holds(in FitWorkspace w, double rss)
    {
        // Residuals cannot be known better than y and the last digits of the parameters let them.
        var length = DataLength;
        for (var j = 0; j < w.Current.Length; j++) length += Math.Abs(w.Current[j]) * w.ColumnLength[j];
        var rounding = Rounding * length;
        return w.Promise() <= Math.Max(Share * rss, rounding * ((2 * Math.Sqrt(rss)) + rounding));
    }
}
