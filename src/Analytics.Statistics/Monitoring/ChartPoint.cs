namespace Analytics.Statistics.Monitoring;

/// <summary>One value on a chart.</summary>
/// <param name="Index">Position in the series, from 0.</param>
/// <param name="Value">The value as measured.</param>
/// <param name="Plotted">What the chart compares with its limits: the value itself, or the average so far.</param>
/// <param name="Limits">The limits at this point.</param>
public sealed record ChartPoint(int Index, double Value, double Plotted, Interval Limits)
{
    /// <summary>Whether the plotted value lies outside its limits.</summary>
    public bool Signals => !Limits.Contains(Plotted);
}
