using System.Text.RegularExpressions;

namespace Analytics.Notebooks.Look;

/// <summary>The style sheet of all blocks.</summary>
public static partial class Sheet
{
    private const int MostColumns = 14;

    private static readonly Lazy<string> Compact = new(() => Compacted("look.css") + ColumnRules());

    /// <summary>The rules, without comments and line breaks.</summary>
    public static string Css => Compact.Value;

    /// <summary>
    /// The sheet as an element. Every block carries it; a page keeps the first and leaves out later ones with
    /// the same <c>data-once</c>.
    /// </summary>
    public static string StyleElement { get; } = "<style data-once=\"look\">" + Css + "</style>";

    /// <summary>A sheet that comes with the assembly, without comments and line breaks.</summary>
    internal static string Compacted(string name)
    {
        using var stream = typeof(Sheet).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The style sheet {name} is missing from the assembly.");
        using var reader = new StreamReader(stream);
        var css = Comments().Replace(reader.ReadToEnd(), string.Empty);
        return Gaps().Replace(Spaces().Replace(css, " "), "$1$2").Replace(";}", "}", StringComparison.Ordinal).Trim();
    }

    // Column by column: numbers flush right and on one line (their heads may wrap), and in a narrow place the words
    // of the head beside the cell. The words come from the table's own --l2, --l3 ...; which columns are numbers
    // from its classes n2, n3 ...
    private static string ColumnRules()
    {
        var columns = Enumerable.Range(1, MostColumns).ToArray();
        var numeric = string.Join(',', columns.Select(i => Rule($".rb .n{i} tr>:nth-child({i})")));
        var labels = string.Concat(columns.Skip(1).Select(i => Rule($".rb .dt td:nth-child({i})::before{{content:var(--l{i})}}")));
        var numericCells = string.Join(',', columns.Select(i => Rule($".rb .n{i} td:nth-child({i})")));
        return $"{numeric}{{text-align:right}}{numericCells}{{white-space:nowrap}}@container (max-width: 640px){{{labels}{numericCells}{{grid-column:auto;display:block;text-align:left}}}}";
    }

    private static string Rule(FormattableString rule) => FormattableString.Invariant(rule);

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comments();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    // Around + and before : a space carries meaning, so those stay.
    [GeneratedRegex(@"\s*([{};,>])\s*|(:)\s+")]
    private static partial Regex Gaps();
}
