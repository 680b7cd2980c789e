using Analytics.Runner.Sources;

namespace Analytics.Runner.Tests.Sources;

public class CodeFileTests
{
    [Fact]
    public void Read_Notebook_TakesTheTaggedCellsByTheNumberTheirAuthorCounts()
    {
        using var folder = new TempFolder();
        var path = new TinyNotebook().Settings("var x = 1;").Code("// put in", "injected-parameters").Markdown("Words", "idea").Code("var a = 1;", "idea").Code("var b = 2;").Code("var c = 3;\nvar d = 4;", "idea", "other").WriteTo(folder, "bench.ipynb");
        var file = CodeFile.Read(path, "idea");
        Assert.Equal("bench.ipynb", file.Name);
        Assert.Equal([new CodePart("bench.ipynb, cell 2", "var a = 1;"), new CodePart("bench.ipynb, cell 4", "var c = 3;\nvar d = 4;")], file.Parts);
    }

    [Fact]
    public void Read_Script_IsOnePartWithTheDigestOfItsBytes()
    {
        using var folder = new TempFolder();
        var path = folder.File("abc.csx");
        File.WriteAllText(path, "abc");
        var file = CodeFile.Read(path, "idea");
        // SHA-256 of "abc", FIPS 180-4, example B.1.
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", file.Sha256);
        Assert.Equal([new CodePart("abc.csx", "abc")], file.Parts);
    }

    [Fact]
    public void Read_NotebookWithoutTheTag_SaysWhatToTag()
    {
        using var folder = new TempFolder();
        var path = new TinyNotebook().Code("var a = 1;").WriteTo(folder, "bench.ipynb");
        var failure = Assert.Throws<NotebookException>(() => CodeFile.Read(path, "idea"));
        Assert.Equal(Fault.Usage, failure.Kind);
        Assert.Contains("No code cell of 'bench.ipynb' is tagged 'idea'", failure.Message);
    }

    [Theory]
    [InlineData("ideas.txt", "neither a notebook (.ipynb) nor a file of C# (.csx)")]
    [InlineData("gone.csx", "There is no file")]
    [InlineData("gone.ipynb", "There is no notebook")]
    public void Read_WhatIsNoFileOfCode_IsAnErrorOfUsage(string name, string says)
    {
        using var folder = new TempFolder();
        File.WriteAllText(folder.File("ideas.txt"), "var a = 1;");
        var failure = Assert.Throws<NotebookException>(() => CodeFile.Read(folder.File(name), "idea"));
        Assert.Equal(Fault.Usage, failure.Kind);
        Assert.Contains(says, failure.Message);
    }
}
