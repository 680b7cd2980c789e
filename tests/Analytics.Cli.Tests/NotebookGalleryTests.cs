using System.Text.RegularExpressions;
using Analytics.Cli.Tests.Architecture;

namespace Analytics.Cli.Tests;

/// <summary>The gallery shows every notebook with a picture and a question.</summary>
public partial class NotebookGalleryTests
{
    private static readonly string s_gallery = File.ReadAllText(Repository.Path("docs/gallery.md"));

    public static TheoryData<string> Notebooks => [.. Directory.EnumerateFiles(Repository.Path("notebooks"), "*.ipynb").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Notebooks))]
    public void Gallery_Notebook_HasAHeadingAPictureAndAQuestion(string notebook)
    {
        var name = char.ToUpperInvariant(notebook[0]) + notebook[1..].Replace('-', ' ');
        var part = Assert.Single(Heading().Split(s_gallery), p => p.StartsWith($"[{name}](", StringComparison.Ordinal));
        Assert.Contains($"](images/{notebook}.png)", part, StringComparison.Ordinal);
        Assert.Matches(@"\*\*[^*]+\?\*\*", part);
    }

    [Fact]
    public void Gallery_LinksAndPictures_AreThere()
    {
        var targets = Target().Matches(s_gallery).Select(m => m.Groups[1].Value).ToList();
        Assert.NotEmpty(targets);
        Assert.DoesNotContain(targets, t => !File.Exists(Path.Combine(Repository.Path("docs"), t)));
    }

    [GeneratedRegex("^## ", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"\]\(([^)#]+)\)")]
    private static partial Regex Target();
}
