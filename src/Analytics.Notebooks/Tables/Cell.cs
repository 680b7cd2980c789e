using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tables;

/// <summary>What stands in one cell.</summary>
/// <param name="Text">Text; null or empty shows the marker for "nothing measured".</param>
/// <param name="Note">A small grey remark under it; empty for none.</param>
/// <param name="Tone">Colour of the text; the words say the same.</param>
public readonly record struct Cell(string? Text, string Note = "", Tone Tone = Tone.Plain)
{
    /// <summary>A cell with nothing in it but the marker.</summary>
    public static Cell Missing => new(null);

    /// <summary>A cell of plain text.</summary>
    /// <param name="text">The text; null for nothing.</param>
    public static implicit operator Cell(string? text) => new(text);

    internal bool IsEmpty => string.IsNullOrWhiteSpace(Text) || Text == Figures.Missing;
}
