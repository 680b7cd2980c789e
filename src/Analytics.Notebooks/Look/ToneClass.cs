namespace Analytics.Notebooks.Look;

/// <summary>Class names of tones.</summary>
internal static class ToneClass
{
    /// <summary>Name for a row or a frame: <c>gain</c>, <c>loss</c>, or empty.</summary>
    public static string Name(Tone tone) => tone switch { Tone.Gain => "gain", Tone.Loss => "loss", _ => string.Empty };

    /// <summary>The same as an attribute with a space before it; empty when there is nothing to say.</summary>
    public static Markup Attribute(Tone tone)
    {
        var name = Name(tone);
        return name.Length == 0 ? new Markup() : new Markup().Add($" class=\"{name}\"");
    }

    /// <summary>Name for words: <c>gain-t</c>, <c>loss-t</c>, <c>muted-t</c>, or empty.</summary>
    public static string Words(Tone tone) => tone switch { Tone.Gain => "gain-t", Tone.Loss => "loss-t", Tone.Muted => "muted-t", _ => string.Empty };
}
