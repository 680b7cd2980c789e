namespace Analytics.Acceptance.Recipes;

public class RecipeReaderTests
{
    [Fact]
    public void Read_APage_GivesItsBlocksInOrder()
    {
        var recipe = RecipeReader.Read("kind", """
            New file `src/A/B.cs`:

            ```csharp
            class B;
            ```

            ```diff
            --- a/src/A/C.cs
            +++ b/src/A/C.cs
            ```

            ```sh
            PAGE=write dotnet test tests/A.Tests -c Release --filter "DisplayName~B|DisplayName~C"
            dotnet run -c Release --project src/A -- run b.ipynb
            ```
            """);

        Assert.Equal(new NewFile(3, "src/A/B.cs", "class B;\n"), recipe.Parts[0]);
        Assert.Equal(["src/A/C.cs"], Assert.IsType<Edit>(recipe.Parts[1]).Paths);
        Assert.Equal("DisplayName~B|DisplayName~C", recipe.Commands.First().Words[^1]);
        Assert.Equal("write", recipe.Commands.First().Variables["PAGE"]);
        Assert.Equal(["run", "b.ipynb"], recipe.Commands.Last().ProgramArguments);
        Assert.Equal(["tests/A.Tests", "src/A"], recipe.Projects);
    }

    [Theory]
    [InlineData("A class:\n\n```csharp\nclass B;\n```\n", "line 3: which file is this block?")]
    [InlineData("`src/A/B.cs`:\n\n```csharp\nclass B;\n", "line 3: the block is not closed")]
    [InlineData("```sh\nrm -r src\n```\n", "Line 2: 'rm -r src' is neither")]
    [InlineData("```sh\ndotnet test tests/A.Tests -c Release\n```\n", "Line 2: 'dotnet test tests/A.Tests -c Release' is neither")]
    public void Read_ABlockThatCannotBeFollowed_IsRefusedWithItsLine(string page, string message)
        => Assert.Contains(message, Assert.Throws<FormatException>(() => RecipeReader.Read("kind", page).Parts.ToList()).Message, StringComparison.Ordinal);
}
