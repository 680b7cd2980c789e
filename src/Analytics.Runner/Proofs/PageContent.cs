namespace Analytics.Runner.Proofs;

/// <summary>What a reader finds on a page, in reading order, without its look.</summary>
public abstract record PageItem;

/// <summary>A heading: what follows stands under it.</summary>
/// <param name="Text">Its text.</param>
public sealed record PageHeading(string Text) : PageItem;

/// <summary>A line of text: a paragraph, an entry of a list, a remark.</summary>
/// <param name="Text">Its text.</param>
public sealed record PageLine(string Text) : PageItem;

/// <summary>A table.</summary>
/// <param name="Caption">Its caption, or the title of the figure it belongs to; empty when it has none.</param>
/// <param name="Heads">Heads of its columns with their units; empty when it has none.</param>
/// <param name="Rows">Its rows; the first cell names the row.</param>
public sealed record PageTable(string Caption, IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows) : PageItem;

/// <summary>Words in a drawing, for example the labels of an axis.</summary>
/// <param name="Text">The words.</param>
public sealed record PageDrawing(string Text) : PageItem;
