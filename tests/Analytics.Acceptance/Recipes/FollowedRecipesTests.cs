using System.Text.RegularExpressions;

namespace Analytics.Acceptance.Recipes;

/// <summary>A newcomer's way through docs/recipes: the files as written, the edits as given, then the commands, in a copy of the repository.</summary>
[Collection(CopyBuilds.Name)]
public sealed partial class FollowedRecipesTests(FollowedRecipes followed) : IClassFixture<FollowedRecipes>
{
    public static TheoryData<string> Kinds => new(Recipe.Kinds);

    [Theory, MemberData(nameof(Kinds))]
    public void Recipe_Followed_ItsCommandsSucceedAndItsTestsPass(string kind)
    {
        var recipe = Recipe.Named(kind);
        var ran = followed.Run(recipe);
        Assert.All(ran, r => Assert.True(r.Code == 0, $"{recipe.Page}, line {r.Command.Line}: {r.Command.Text}\n{r.Said}"));
        // A filter that finds nothing also ends with 0.
        Assert.All(ran.Where(r => r.Command.IsTest), r => Assert.True(Passed().IsMatch(r.Said), $"{recipe.Page}, line {r.Command.Line}: no test ran.\n{r.Said}"));
        Assert.All(recipe.Files.Select(f => Path.GetFileNameWithoutExtension(f.Path)).Where(n => n.EndsWith("Tests", StringComparison.Ordinal)),
            own => Assert.Contains(ran, r => Regex.IsMatch(r.Said, $@"Passed [\w.]+\.{own}\.")));
    }

    [Fact]
    public void Metric_Followed_IsInTheCatalogueAndOnItsPage()
    {
        followed.Run(Recipe.Named("metric"));
        Assert.Contains("| Flying 20 yd | `flying_20yd` | s | lower | best attempt | maximal speed |", followed.Copy.Read("docs/metrics.md"), StringComparison.Ordinal);
    }

    // The question, the answer with its interval, and the chart under it, as the recipe's block writes them.
    [Fact]
    public void Notebook_Followed_ItsPageHoldsTheNewBlock()
    {
        followed.Run(Recipe.Named("notebook"));
        var page = followed.Copy.Read("out/strength-and-jump.html");
        Assert.Matches("""<h2>Do players who squat more for their size jump higher\?</h2><p class="ld">As a rule, yes: correlation \+0\.\d\d \(\+0\.\d\d\sto\s\+0\.\d\d\) over \d+ players[^<]*</p><figure class="fig\b""", page);
    }

    [GeneratedRegex(@"^\s*Passed: +[1-9]", RegexOptions.Multiline)]
    private static partial Regex Passed();
}
