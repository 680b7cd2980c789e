using Analytics.Runner.Kernels;
using Analytics.Runner.Outputs;

namespace Analytics.Runner.Tests.Kernels;

/// <summary>Cells that are compiled ahead of their turn run as if they were not.</summary>
[Collection(KernelTests.Name)]
public sealed class ExpectedCellsTests : IDisposable
{
    private readonly InteractiveKernel kernel = new(new HostAssemblies(AppContext.BaseDirectory), () => { });

    public void Dispose() => kernel.Dispose();

    [Fact]
    public async Task Expected_CellsInOrder_SeeEachOthersNamesAndValues()
    {
        string[] cells = ["var n = 1;", "n += 41; int Half() => n / 2;", "$\"{n} {Half()}\""];
        Expect(cells);
        Assert.Empty(await Run(cells[0]));
        Assert.Empty(await Run(cells[1]));
        Assert.Equal("42 21", await Run(cells[2]));
    }

    [Fact]
    public async Task Expected_CellThatDoesNotCompile_FailsInItsTurnOnly()
    {
        string[] cells = ["var n = 1;", "\nvar m = nothing;", "$\"{n}\""];
        Expect(cells);
        Assert.Empty(await Run(cells[0]));
        Assert.Equal("CompileError 2", await Run(cells[1]));
        Assert.Equal("1", await Run(cells[2]));
    }

    [Fact]
    public async Task Expected_OtherCellsThanRun_DoNotCount()
    {
        Expect(["var n = 1;", "var m = 2;", "$\"{n}\""]);
        Assert.Empty(await Run("var n = 1;"));
        Assert.Empty(await Run("n = 5;"));
        Assert.Equal("5", await Run("$\"{n}\""));
    }

    [Fact]
    public async Task Expected_TheSameCodeTwice_RunsTwice()
    {
        string[] cells = ["var n = 1;", "n++;", "n++;", "$\"{n}\""];
        Expect(cells);
        foreach (var cell in cells[..3])
            Assert.Empty(await Run(cell));
        Assert.Equal("3", await Run(cells[3]));
    }

    [Fact]
    public async Task Expected_CellThatThrows_LeavesWhatItHadSet()
    {
        string[] cells = ["var n = 1;", "n = 2; throw new Exception(\"no\");", "$\"{n}\""];
        Expect(cells);
        Assert.Empty(await Run(cells[0]));
        Assert.Equal("Exception 1", await Run(cells[1]));
        Assert.Equal("2", await Run(cells[2]));
    }

    [Theory]
    [InlineData("Console.Out.Flush()", "")]
    [InlineData("await Task.CompletedTask", "")]
    [InlineData("await Task.FromResult(\"later\")", "later")]
    [InlineData("var a = 1;", "")]
    [InlineData("\"last\" // with a remark", "last")]
    public async Task Result_OfACell_IsTheValueOfItsLastExpression(string cell, string result) => Assert.Equal(result, await Run(cell));

    [Fact]
    public async Task Result_OfACellThatGivesNull_IsShownAsNull()
        => Assert.Contains("&lt;null&gt;", await Run("object? nothing = null;\nnothing"), StringComparison.Ordinal);

    private void Expect(string[] cells) => kernel.Expect([.. cells.Select(c => new CellCode("cell 1", c))]);

    private async Task<string> Run(string cell)
    {
        var outputs = new OutputList();
        var failure = await kernel.RunAsync(new CellCode("cell 1", cell), outputs);
        return failure is not null ? $"{failure.Kind} {failure.Line}"
            : string.Join("|", outputs.Snapshot().Select(o => Assert.IsType<DisplayOutput>(o)).Select(d => d.Form("text/plain") ?? d.Form("text/html")));
    }
}
