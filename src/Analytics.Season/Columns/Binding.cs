using Analytics.Quantities;

namespace Analytics.Season.Columns;

/// <summary>A column found in a head.</summary>
/// <param name="Index">Its place in the row, from 0.</param>
/// <param name="Head">The head as written.</param>
/// <param name="Unit">Its unit; null for a column without.</param>
internal sealed record Binding(int Index, string Head, Unit? Unit = null);
