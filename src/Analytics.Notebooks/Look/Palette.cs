namespace Analytics.Notebooks.Look;

/// <summary>
/// The colours of every report, from the colour-blind-safe set of Okabe and Ito [okabe2008].
/// A colour carries one meaning at most twice, and a shape or a word always stands beside it.
/// </summary>
public static class Palette
{
    /// <summary>Text.</summary>
    public const string Ink = "#1d232a";

    /// <summary>Second text: limits, leads, axes.</summary>
    public const string Muted = "#56616e";

    /// <summary>Thin rules and grid lines.</summary>
    public const string Rule = "#d9dee4";

    /// <summary>Today, and gains: Okabe-Ito blue.</summary>
    public const string Blue = "#0072B2";

    /// <summary>Losses and attention, as a mark: Okabe-Ito vermillion.</summary>
    public const string Orange = "#D55E00";

    /// <summary>Losses and attention, as text: the same hue darkened until it reads on white.</summary>
    public const string OrangeText = "#A84800";

    /// <summary>Marks that say nothing either way.</summary>
    public const string Grey = "#6b7683";

    /// <summary>The band of what is too small to matter, and target windows.</summary>
    public const string Band = "#E6F0F7";

    /// <summary>Ground of a note on what was held back.</summary>
    public const string Note = "#FFF7EC";

    /// <summary>Paper.</summary>
    public const string Paper = "#ffffff";

    /// <summary>Further series of a chart after <see cref="Blue"/>, in order: Okabe-Ito vermillion, black, purple, sky blue.</summary>
    public static IReadOnlyList<string> Series { get; } = [Blue, Orange, Ink, "#CC79A7", "#56B4E9"];
}
