namespace Analytics.Statistics.Association.Repeated;

/// <summary>Second moments of the gains in two measures, and the part that errors on the same day have in them.</summary>
/// <param name="XX">Variance of the gains in x.</param>
/// <param name="YY">Variance of the gains in y.</param>
/// <param name="XY">Covariance of the gains.</param>
/// <param name="ErrorXX">Part of <paramref name="XX"/> due to errors.</param>
/// <param name="ErrorYY">Part of <paramref name="YY"/> due to errors.</param>
/// <param name="ErrorXY">Part of <paramref name="XY"/> due to errors that go together on a day.</param>
internal readonly record struct GainMoments(double XX, double YY, double XY, double ErrorXX, double ErrorYY, double ErrorXY)
{
    /// <summary>Correlation of the gains as they come out.</summary>
    public double Raw => XY / Math.Sqrt(XX * YY);

    /// <summary>The same with the covariance of the errors taken off.</summary>
    public double Clean => (XY - ErrorXY) / Math.Sqrt(XX * YY);
}
