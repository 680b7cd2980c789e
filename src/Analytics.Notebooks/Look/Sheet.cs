using System.Globalization;
using System.Text.RegularExpressions;

namespace Analytics.Notebooks.Look;

/// <summary>The style sheet of all blocks.</summary>
public static partial class Sheet
{
    private const int MostLabelledColumns = 16;

    private static readonly Lazy<string> Compact = new(Load);

    /// <summary>The rules, without comments and line breaks.</summary>
    public static string Css => Compact.Value;

    /// <summary>
    /// The sheet as an element. Every block carries it; a page keeps the first and leaves out later ones with
    /// the same <c>data-once</c>.
    /// </summary>
    public static string StyleElement { get; } = "<style data-once=\"look\">" + Css + "</style>";

    private static string Load()
    {
        using var stream = typeof(Sheet).Assembly.GetManifestResourceStream("look.css")
            ?? throw new InvalidOperationException("The style sheet look.css is missing from the assembly.");
        using var reader = new StreamReader(stream);
        var css = Comments().Replace(reader.ReadToEnd(), string.Empty);
        return Gaps().Replace(Spaces().Replace(css, " "), "$1").Replace(";}", "}", StringComparison.Ordinal).Trim() + CardLabels();
    }

    // In a narrow place a cell says which column it belongs to; the words come from the table's own --l2, --l3 ...
    private static string CardLabels()
    {
        var rules = Enumerable.Range(2, MostLabelledColumns - 1)
            .Select(i => string.Create(CultureInfo.InvariantCulture, $".rb .dt td:nth-child({i})::before{{content:var(--l{i})}}"));
        return "@container (max-width: 640px){" + string.Concat(rules) + "}";
    }

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comments();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    // Around + and : a space carries meaning, so those stay.
    [GeneratedRegex(@"\s*([{};,])\s*")]
    private static partial Regex Gaps();
}
