using Analytics.Cli.Tests.Architecture;

namespace Analytics.Cli.Tests;

/// <summary>Small files, one idea each.</summary>
public class SourceSizeTests
{
    private static readonly IReadOnlyList<(string File, int Lines)> Files =
        [.. Repository.Sources("src", "*.cs").Select(f => (f, File.ReadLines(Repository.Path(f)).Count())).OrderBy(f => f.Item2)];

    [Fact]
    public void Source_MedianFile_HasAtMost90Lines() => Assert.InRange(Files[Files.Count / 2].Lines, 1, 90);

    [Fact]
    public void Source_NinetyFiveInAHundredFiles_HaveAtMost300Lines() => Assert.InRange(Files[(int)Math.Ceiling(0.95 * Files.Count) - 1].Lines, 1, 300);

    [Fact]
    public void Source_FilesOver400Lines_DoNotExist() => Assert.DoesNotContain(Files, f => f.Lines > 400);
}
