using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>A named window on an axis.</summary>
/// <param name="Name">Its name, for example <c>target window</c>.</param>
/// <param name="Low">Lower limit, in the unit of the axis.</param>
/// <param name="High">Upper limit, in the unit of the axis.</param>
public sealed record Window(string Name, double Low, double High)
{
    private const int LongestName = 30;

    internal string Label => OutsideText.Cut(OutsideText.Label(Name), LongestName);
}
