namespace Analytics.Runner.Pages;

/// <summary>The page's own style and script.</summary>
internal static class PageParts
{
    /// <summary>The style sheet.</summary>
    public static string Style { get; } = Read("page.css");

    /// <summary>The script. Its exact text is what the page's policy lets run.</summary>
    public static string Script { get; } = Read("page.js");

    private static string Read(string name)
    {
        using var stream = typeof(PageParts).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The program lacks its part '{name}'.");
        using var reader = new StreamReader(stream);
        // The browser's parser turns line ends into line feeds before it takes the hash.
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
