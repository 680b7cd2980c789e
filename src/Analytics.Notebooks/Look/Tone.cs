namespace Analytics.Notebooks.Look;

/// <summary>What a coloured word or mark says; the words beside it say the same.</summary>
public enum Tone
{
    /// <summary>Nothing special.</summary>
    Plain,

    /// <summary>A gain, or today's state: blue.</summary>
    Gain,

    /// <summary>A loss, or something that asks for attention: burnt orange.</summary>
    Loss,

    /// <summary>Undecided or secondary: grey.</summary>
    Muted,
}
