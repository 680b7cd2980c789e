using System.Globalization;
using System.Text.RegularExpressions;
using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Recipes;
using Analytics.Metrics.Catalogue;

namespace Analytics.Acceptance.Promoting;

/// <summary>A sketch becomes a metric in a copy of the repository, is built and tested there, and is taken back.</summary>
[Collection(CopyBuilds.Name)]
public sealed partial class PromotionTests(CommittedCopy committed) : IClassFixture<CommittedCopy>
{
    private const string Sketch = """
        var forSize = Sketch.Each<JumpTrial>("long_jump_for_size", "Long jump for size", unit: "1", Direction.Higher, believe: (0.8, 2.2),
            (jump, day) => jump.Kind == JumpKind.StandingLong ? jump.Distance / day.Stature : null) with { Rule = TrialRule.Best, Meaning = "How far the body is thrown for its length." };
        """;

    [Fact]
    public void Promote_WithWaiver_BuildsPassesItsTestsAndThoseOfTheCatalogueAndIsTakenBack()
    {
        // Texts that would break the build if they were not written as texts.
        var (code, said) = Promote("--waive", "an idea \"of our own\" */ so nobody has published it", "--label", "Long <jump> & \"size\" \\", "--meaning", "How far </summary> the body goes.");
        Assert.True(code == 0, said);
        var (passed, failed, _) = Counted(said);
        Assert.Equal(0, failed);
        // Twelve regression rows, the check, and six tests of the catalogue for each metric.
        Assert.InRange(passed, 12 + 1 + 6 * (MetricCatalogue.All.Count + 1), 2000);
        Assert.Contains("| `throw_for_size` |", committed.Copy.Read("docs/metrics.md"), StringComparison.Ordinal);
        TakenBack(said);
    }

    [Fact]
    public void Promote_WithoutWaiver_CountsTheBlankCheckAndIsTakenBack()
    {
        var (code, said) = Promote();
        Assert.True(code == 0, said);
        var (_, failed, blank) = Counted(said);
        Assert.Equal((1, 1), (failed, blank));
        Assert.Contains("A blank check fails on purpose: in tests/Analytics.Metrics.Tests/Jumping/ThrowForSizeMetricTests.cs", said, StringComparison.Ordinal);
        TakenBack(said);
    }

    private (int Code, string Said) Promote(params string[] more)
    {
        var file = Path.Combine(committed.Copy.Root, "out", "ideas.csx"); // out is ignored by git
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, Sketch);
        return committed.Copy.Dotnet(new Dictionary<string, string?>(), [Repository.Program, "promote", file, "--name", "throw_for_size", .. more]);
    }

    private static (int Passed, int Failed, int Blank) Counted(string said)
    {
        var counts = Counts().Match(said);
        Assert.True(counts.Success, said);
        int Number(int group) => counts.Groups[group] is { Success: true } g ? int.Parse(g.ValueSpan, CultureInfo.InvariantCulture) : 0;
        return (Number(1), Number(2), Number(3));
    }

    // The line as printed, by a shell, as a reader would use it.
    private void TakenBack(string said)
    {
        var undo = said.Split('\n').Single(l => l.StartsWith("  git ", StringComparison.Ordinal)).Trim();
        Assert.Equal(0, Running.Run("bash", ["-c", undo], committed.Copy.Root).Code);
        Assert.Equal("", Running.Run("git", ["status", "--porcelain", "--untracked-files=all"], committed.Copy.Root).Out);
    }

    [GeneratedRegex(@"^Tests of the metric and the catalogue: (\d+) passed, (\d+) failed(?:, of these (\d+) blank)?\.", RegexOptions.Multiline)]
    private static partial Regex Counts();
}

/// <summary>A copy of the repository with everything in it committed.</summary>
public sealed class CommittedCopy : IDisposable
{
    private readonly Lazy<RepositoryCopy> copy = new(Make);

    internal RepositoryCopy Copy => copy.Value;

    public void Dispose()
    {
        if (copy.IsValueCreated) copy.Value.Dispose();
    }

    private static RepositoryCopy Make()
    {
        var made = RepositoryCopy.Make();
        foreach (var arguments in new string[][] { ["add", "--all"], ["-c", "user.name=t", "-c", "user.email=t@example.org", "-c", "commit.gpgsign=false", "commit", "--quiet", "--message", "As it is"] })
        {
            var (code, _, error) = Running.Run("git", arguments, made.Root);
            if (code == 0) continue;
            made.Dispose();
            throw new InvalidOperationException($"git {arguments[0]}: {error}");
        }

        return made;
    }
}
