using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.OnTrial;

/// <summary>The words that mark a metric on trial behind its label, wherever it stands.</summary>
internal static class TrialMark
{
    private const string Words = " (trial metric)";

    /// <summary>A label with the mark; a monster is cut before the mark is put behind it.</summary>
    public static string On(string label) => Name(label) + Words;

    /// <summary>A label as typed, fit for a page and with room for the mark.</summary>
    public static string Name(string label) => OutsideText.Cut(OutsideText.Label(label), OutsideText.LongestLabel - Words.Length);

    /// <summary>The label of a metric without the mark, for places that say themselves what kind of metric it is.</summary>
    public static string Without(Metric metric) => IsOn(metric.Label) ? metric.Label[..^Words.Length] : metric.Label;

    /// <summary>At most so many visible characters; what is cut off is the label and never the mark.</summary>
    public static string Cut(string label, int longest)
        => IsOn(label) && longest > 2 * Words.Length - 3 ? OutsideText.Cut(label[..^Words.Length], longest - Words.Length) + Words : OutsideText.Cut(label, longest);

    private static bool IsOn(string label) => label.EndsWith(Words, StringComparison.Ordinal);
}
