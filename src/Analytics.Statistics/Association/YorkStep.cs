namespace Analytics.Statistics.Association;

/// <summary>One step of York's iteration at a slope, and what stands at the end of it.</summary>
internal readonly record struct YorkStep(double MeanX, double MeanY, double Next, double SlopeError, double InterceptError, double Squares, int N)
{
    public static YorkStep At(IReadOnlyList<double> x, IReadOnlyList<double> y, IReadOnlyList<double> wx, IReadOnlyList<double> wy, double slope)
    {
        var n = x.Count;
        var w = new double[n];
        double sum = 0, mx = 0, my = 0;
        for (var i = 0; i < n; i++)
        {
            w[i] = wx[i] * wy[i] / (wx[i] + slope * slope * wy[i]);
            sum += w[i];
            mx += w[i] * x[i];
            my += w[i] * y[i];
        }

        mx /= sum;
        my /= sum;
        double top = 0, bottom = 0, squares = 0, adjusted = 0;
        var beta = new double[n];
        for (var i = 0; i < n; i++)
        {
            double u = x[i] - mx, v = y[i] - my;
            beta[i] = w[i] * (u / wy[i] + slope * v / wx[i]);
            top += w[i] * beta[i] * v;
            bottom += w[i] * beta[i] * u;
            squares += w[i] * (v - slope * u) * (v - slope * u);
            // Adjusted x, as a distance from the weighted mean.
            adjusted += w[i] * beta[i];
        }

        var centre = adjusted / sum;
        double spread = 0;
        for (var i = 0; i < n; i++) spread += w[i] * (beta[i] - centre) * (beta[i] - centre);
        var slopeError = Math.Sqrt(1 / spread);
        var place = mx + centre;
        return new(mx, my, top / bottom, slopeError, Math.Sqrt(1 / sum + place * place * slopeError * slopeError), squares, n);
    }
}
