using Analytics.Acceptance.Programs;

namespace Analytics.Acceptance.Recipes;

/// <summary>The worked examples against the files as they are now; nothing is built. <see cref="FollowedRecipesTests"/> follows them.</summary>
public class RecipePagesTests
{
    public static TheoryData<string> Kinds => new(Recipe.Kinds);

    [Fact]
    public void Pages_AreTheKnownOnesAndLinkedForContributors()
    {
        var pages = Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs", "recipes"), "*.md").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal);
        Assert.Equal(Recipe.Kinds, pages);
        var guide = File.ReadAllText(Path.Combine(Repository.Root, "DEVELOPERS.md"));
        Assert.All(Recipe.Kinds, kind => Assert.Contains($"(docs/recipes/{kind}.md)", guide, StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Page_HasFilesATestAndEndsWithTestingIt(string kind)
    {
        var recipe = Recipe.Named(kind);
        Assert.NotEmpty(recipe.Files);
        Assert.Contains(recipe.Files, f => f.Path.StartsWith("tests/", StringComparison.Ordinal) && f.Path.EndsWith("Tests.cs", StringComparison.Ordinal));
        Assert.Contains(recipe.Commands, c => c.IsTest);
        Assert.IsType<RecipeCommand>(recipe.Parts[^1]);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Page_Edits_ApplyToTheFilesAsTheyAre(string kind)
    {
        var recipe = Recipe.Named(kind);
        Assert.All(recipe.Edits, edit =>
        {
            Assert.NotEmpty(edit.Paths);
            Assert.All(edit.Paths, path => Assert.True(File.Exists(In(path)), Stale(recipe, edit, $"there is no {path}.")));
            var why = RepositoryCopy.Apply(Repository.Root, edit.Diff, "--check");
            Assert.True(why is null, Stale(recipe, edit, $"the edit of {string.Join(" and ", edit.Paths)} does not apply any more. Make the diff anew against the file as it is.\n{why}"));
        });
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Page_FilesAndProjects_HaveTheirPlace(string kind)
    {
        var recipe = Recipe.Named(kind);
        Assert.All(recipe.Files, file =>
        {
            Assert.False(File.Exists(In(file.Path)), Stale(recipe, file, $"{file.Path} is there by now. Choose another example."));
            // A folder of its own within a project may be new; a project, notebooks or tests/oracles may not.
            var place = string.Join('/', file.Path.Split('/')[..^1].Take(2));
            Assert.True(Directory.Exists(In(place)), Stale(recipe, file, $"there is no folder {place}."));
        });
        Assert.All(recipe.Commands, command => Assert.True(Directory.Exists(In(command.Project)), Stale(recipe, command, $"there is no project {command.Project}.")));
    }

    private static string In(string path) => Path.Combine(Repository.Root, path);

    private static string Stale(Recipe recipe, RecipePart part, string why) => $"{recipe.Page} is stale, line {part.Line}: {why}";
}
