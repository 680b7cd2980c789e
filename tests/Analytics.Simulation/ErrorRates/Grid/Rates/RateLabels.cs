namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>Words shared by cases.</summary>
public static class RateLabels
{
    public static string Degrees(double df) => double.IsPositiveInfinity(df) ? "typical error known" : FormattableString.Invariant($"df {df}");
}
