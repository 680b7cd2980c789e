using System.Text.RegularExpressions;

namespace Analytics.Metrics.Tests.Catalogue;

public partial class ReferencesTests
{
    private static readonly IReadOnlyList<string> Keys =
        [.. Listed().Matches(File.ReadAllText(Repository.Path("docs", "references.md"))).Select(m => m.Groups[1].Value)];

    [Fact]
    public void List_Keys_AreUniqueAndInOrder() => Assert.Equal(Keys.Distinct().Order(StringComparer.Ordinal), Keys);

    [Fact]
    public void Cited_Keys_AreInTheList()
    {
        var pages = Directory.EnumerateFiles(Repository.Path("docs", "methods"), "*.md");
        var code = Directory.EnumerateFiles(Repository.Path("src"), "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));
        var missing = from file in pages.Concat(code)
                      from citation in Bracket().Matches(File.ReadAllText(file))
                      from key in Key().Matches(citation.Value).Select(k => k.Value).Except(Keys)
                      select $"{Path.GetRelativePath(Repository.Root, file)}: {key}";
        Assert.Equal([], missing.Distinct());
    }

    [GeneratedRegex(@"^- \*\*(\S+?)\*\*", RegexOptions.Multiline)]
    private static partial Regex Listed();

    // [key2001], [key2001, eq. 3], [key2001; other1999]
    [GeneratedRegex(@"\[[a-z]+(?:19|20)\d\d[^\]\n]*\]")]
    private static partial Regex Bracket();

    [GeneratedRegex(@"\b[a-z]+(?:19|20)\d\d[a-z0-9]*")]
    private static partial Regex Key();
}
