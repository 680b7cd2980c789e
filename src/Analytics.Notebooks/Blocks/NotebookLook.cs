namespace Analytics.Notebooks.Blocks;

/// <summary>
/// The notebook kernel looks for an attribute of this name and asks the named type for formatters. By that
/// convention a block has its look in a notebook without a reference to the notebook packages.
/// </summary>
[AttributeUsage(AttributeTargets.Class, Inherited = true)]
internal sealed class TypeFormatterSourceAttribute(Type formatterSourceType) : Attribute
{
    public Type FormatterSourceType { get; } = formatterSourceType;

    // Both types of output in one bundle: a page takes the HTML, a terminal the text.
    public string[] PreferredMimeTypes { get; set; } = ["text/html", "text/plain"];
}

/// <summary>The formatters of a block; found by the kernel through <see cref="TypeFormatterSourceAttribute"/>.</summary>
internal sealed class BlockFormatterSource
{
    private readonly IReadOnlyList<BlockFormatter> _formatters =
    [
        new("text/html", block => block.ToHtml()),
        new("text/plain", block => block.ToText()),
    ];

    public IEnumerable<object> CreateTypeFormatters() => _formatters;
}

/// <summary>Writes a block as one type of output; the member names are the kernel's convention.</summary>
internal sealed class BlockFormatter(string mimeType, Func<Block, string> text)
{
    public string MimeType { get; } = mimeType;

    public bool Format(object instance, TextWriter writer)
    {
        if (instance is not Block block) return false;
        writer.Write(text(block));
        return true;
    }
}
