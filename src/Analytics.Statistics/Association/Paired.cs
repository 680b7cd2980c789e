namespace Analytics.Statistics.Association;

/// <summary>Checks of two columns that belong together, and their sums of squares.</summary>
internal static class Paired
{
    /// <summary>Two columns of equal length, all finite, at least <paramref name="minimum"/> pairs.</summary>
    public static void Require(IReadOnlyList<double> x, IReadOnlyList<double> y, int minimum)
    {
        Statistics.Require.Sample(x, minimum, nameof(x));
        Statistics.Require.Sample(y, minimum, nameof(y));
        SameLength(x, y);
    }

    public static void SameLength<T>(IReadOnlyList<double> x, IReadOnlyList<T> y, string name = "y")
    {
        if (x.Count != y.Count)
            throw new ArgumentException($"x holds {x.Count} values but {name} holds {y.Count}; give one of each per pair and leave pairs with a missing value out.", name);
    }

    /// <summary>The column varies; otherwise an error that says what to do.</summary>
    public static void Varies(IReadOnlyList<double> values, string name, string need)
    {
        for (var i = 1; i < values.Count; i++)
        {
            if (!values[i].Equals(values[0])) return;
        }

        throw new ArgumentException(FormattableString.Invariant($"All {values.Count} values of {name} are {values[0]}; {need} needs values that differ."), name);
    }

    /// <summary>Means and centred sums. The corrections take off what the means lost to rounding.</summary>
    public static PairSums Sums(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        var n = x.Count;
        double mx = 0, my = 0;
        for (var i = 0; i < n; i++)
        {
            mx += x[i];
            my += y[i];
        }

        mx /= n;
        my /= n;
        double dx = 0, dy = 0, xx = 0, yy = 0, xy = 0;
        for (var i = 0; i < n; i++)
        {
            double a = x[i] - mx, b = y[i] - my;
            dx += a;
            dy += b;
            xx += a * a;
            yy += b * b;
            xy += a * b;
        }

        return new(mx + dx / n, my + dy / n, xx - dx * dx / n, yy - dy * dy / n, xy - dx * dy / n, n);
    }
}

/// <summary>Means and centred sums of squares and products of n pairs.</summary>
internal readonly record struct PairSums(double MeanX, double MeanY, double XX, double YY, double XY, int N)
{
    /// <summary>Pearson's r; what differs from ±1 by rounding only is ±1.</summary>
    public double Correlation
    {
        get
        {
            var r = XY / Math.Sqrt(XX) / Math.Sqrt(YY);
            return 1 - Math.Abs(r) < 1e-14 ? Math.Sign(r) : r;
        }
    }
}
