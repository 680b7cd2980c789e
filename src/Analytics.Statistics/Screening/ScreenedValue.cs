namespace Analytics.Statistics.Screening;

/// <summary>A value that a screen points at. Nothing is removed: whether it is an error is for a person to find out.</summary>
/// <param name="Index">Place in the list given, from 0.</param>
/// <param name="Value">The value itself.</param>
/// <param name="Statistic">How far out it is by the screen's measure.</param>
public sealed record ScreenedValue(int Index, double Value, double Statistic);
