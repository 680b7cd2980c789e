namespace Analytics.Statistics.Results;

/// <summary>
/// The notebook kernel looks for an attribute of this name and asks the named type for formatters. By that
/// convention a result has its look in a notebook without a reference to the notebook packages.
/// </summary>
[AttributeUsage(AttributeTargets.Class, Inherited = true)]
internal sealed class TypeFormatterSourceAttribute(Type formatterSourceType) : Attribute
{
    public Type FormatterSourceType { get; } = formatterSourceType;

    // Both types of output in one bundle: a page takes the HTML, a terminal the text.
    public string[] PreferredMimeTypes { get; set; } = ["text/html", "text/plain"];
}

/// <summary>The formatters of a result; found by the kernel through <see cref="TypeFormatterSourceAttribute"/>.</summary>
internal sealed class ResultFormatterSource
{
    private readonly IReadOnlyList<ResultFormatter> _formatters =
    [
        new("text/html", sheet => sheet.ToHtml()),
        new("text/plain", sheet => sheet.ToText()),
    ];

    public IEnumerable<object> CreateTypeFormatters() => _formatters;
}

/// <summary>Writes a result as one type of output; the member names are the kernel's convention.</summary>
internal sealed class ResultFormatter(string mimeType, Func<ResultSheet, string> text)
{
    public string MimeType { get; } = mimeType;

    public bool Format(object instance, TextWriter writer)
    {
        if (instance is not Result result) return false;
        writer.Write(text(result.Sheet()));
        return true;
    }
}
