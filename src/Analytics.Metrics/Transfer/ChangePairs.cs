namespace Analytics.Metrics.Transfer;

/// <summary>The two changes of every player from the first to the last occasion on which both were measured.</summary>
/// <param name="X">Changes in the weight-room measure, gains positive.</param>
/// <param name="Y">Changes in the field measure, gains positive.</param>
/// <param name="FactorX">Error variance of a change in squared typical errors, mean over the players: 1/days before + 1/days after.</param>
/// <param name="FactorY">The same of y.</param>
/// <param name="FactorBoth">Covariance of the two changes for errors on one day that covary by 1, taken as the smaller of the two factors.</param>
internal sealed record ChangePairs(IReadOnlyList<double> X, IReadOnlyList<double> Y, double FactorX, double FactorY, double FactorBoth)
{
    /// <summary>Fewest players: with fewer a jackknifed line has hardly a degree of freedom (our choice).</summary>
    public const int Least = 4;

    public static ChangePairs? Of(TransferMeasure x, TransferMeasure y, TestingCalendar calendar)
    {
        var on = Enumerable.Range(0, calendar.Occasions).Select(o => (X: calendar.On(o, x.Turned), Y: calendar.On(o, y.Turned)))
            .Where(o => o.X.Keys.Count(o.Y.ContainsKey) >= Least).ToList();
        if (on.Count < 2) return null;
        var (first, last) = (on[0], on[^1]);
        var ids = first.X.Keys.Where(id => first.Y.ContainsKey(id) && last.X.ContainsKey(id) && last.Y.ContainsKey(id)).Order(StringComparer.Ordinal).ToList();
        if (ids.Count == 0) return null;
        var (fx, fy) = (ids.Average(id => Factor(first.X[id], last.X[id])), ids.Average(id => Factor(first.Y[id], last.Y[id])));
        return new([.. ids.Select(id => last.X[id].Mean - first.X[id].Mean)], [.. ids.Select(id => last.Y[id].Mean - first.Y[id].Mean)], fx, fy, Math.Min(fx, fy));
    }

    private static double Factor((double Mean, int Days) before, (double Mean, int Days) after) => 1.0 / before.Days + 1.0 / after.Days;
}
