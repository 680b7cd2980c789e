namespace Analytics.Notebooks.Blocks;

/// <summary>A piece of a report that a cell returns: HTML for a page, text for a terminal.</summary>
[TypeFormatterSource(typeof(BlockFormatterSource))]
public abstract class Block
{
    /// <summary>HTML that stands on its own; every outside text is escaped.</summary>
    public abstract string ToHtml();

    /// <summary>The same content as plain text.</summary>
    public abstract string ToText();

    /// <inheritdoc/>
    public override string ToString() => ToText();
}
