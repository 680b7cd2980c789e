using Analytics.Statistics.Association;
using Analytics.Statistics.Fitting;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Trends;

/// <summary>A straight trend by least squares, with what its residuals say about carry-over from one value to the next [durbinwatson1950].</summary>
/// <param name="Line">The line with its errors, which take the values as independent.</param>
/// <param name="DurbinWatson">
/// Σ(eᵢ − eᵢ₋₁)²/Σe²: near 2 when successive residuals are unrelated, toward 0 when alike, toward 4 when they alternate. Null when the line fits
/// exactly or x does not ascend.
/// </param>
/// <param name="SerialCorrelation">Correlation of successive residuals; null as <paramref name="DurbinWatson"/>.</param>
public sealed record LeastSquaresTrend(StraightLine Line, double? DurbinWatson, SerialCorrelation? SerialCorrelation) : Result
{
    /// <summary>The trend of y over x.</summary>
    /// <param name="x">Times or other positions, at least three, not all equal.</param>
    /// <param name="y">The value at each.</param>
    public static LeastSquaresTrend Of(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        Paired.Require(x, y, 3);
        Paired.Varies(x, nameof(x), "a slope");
        double middle = x.Average(), spread = x.Max() - x.Min();
        if (spread < 1e-12 * Math.Abs(middle))
            throw new ArgumentException(FormattableString.Invariant($"x varies by {spread} about {middle}: too little for double precision. Count x from its start."), nameof(x));
        var line = StraightLine.Of(x, y);
        double[] rest = [.. x.Zip(y, line.Residual)];
        var serial = Trends.SerialCorrelation.OfResiduals(x, rest, y);
        return new(line, serial is null ? null : rest.Zip(rest.Skip(1), (a, b) => (b - a) * (b - a)).Sum() / line.ResidualSquares, serial);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet()
    {
        var line = Line.Sheet();
        return line with
        {
            Title = "Trend by least squares",
            Method = line.Method + "; Durbin and Watson [durbinwatson1950]",
            Lines =
            [
                .. line.Lines,
                new("Durbin-Watson", DurbinWatson) { Note = "2 when successive residuals are unrelated" },
                new("lag-1 correlation after the trend", SerialCorrelation?.LagOne),
            ],
            Remarks = [.. line.Remarks, .. SerialCorrelation?.Remarks ?? []],
        };
    }
}
