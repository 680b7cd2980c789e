using Analytics.Runner.Documents;
using Analytics.Runner.Kernels;
using Analytics.Runner.Sources;

namespace Analytics.Runner.Tests.Sources;

public sealed class CodeEvaluationTests : IDisposable
{
    private static readonly TimeSpan Long = TimeSpan.FromMinutes(2);

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Values_Variables_AreOfThisProgramsTypes()
    {
        var values = await ValuesAsync(["cell", "n"], "var n = 1;", "var n = 2; var cell = NotebookCell.Code(\"a\", \"b\");");
        Assert.Equal("b", Assert.IsType<NotebookCell>(values[0]).Source);
        Assert.Equal(2, values[1]);
    }

    [Fact]
    public async Task Values_ReferenceToABuildElsewhere_IsThisProgramsAssembly()
    {
        var values = await ValuesAsync(["cell"], "#r \"elsewhere/Analytics.Runner.dll\"\nvar cell = NotebookCell.Code(\"a\", \"b\");");
        Assert.IsType<NotebookCell>(values[0]);
    }

    [Theory]
    [InlineData("var a = 1;\nvar b = c;", "ideas.csx, line 2: CS0103: The name 'c' does not exist")]
    [InlineData("var a = 1;\n\nint.Parse(\"x\");", "ideas.csx, line 3: FormatException: The input string 'x'")]
    [InlineData("var b = 1;", "The code declares no variable 'a'.")]
    public async Task Values_CodeThatFails_NamesThePlace(string code, string says)
        => Assert.Contains(says, (await Assert.ThrowsAsync<NotebookException>(() => ValuesAsync(["a"], code))).Message, StringComparison.Ordinal);

    [Fact]
    public async Task Values_CodeThatDoesNotEnd_IsLeft()
    {
        var failure = await Assert.ThrowsAsync<NotebookException>(() => Evaluation().ValuesAsync([new("ideas.csx", "await System.Threading.Tasks.Task.Delay(-1);")], ["a"], TimeSpan.FromSeconds(1)));
        Assert.Contains("ideas.csx: the code was still running after 1 s", failure.Message, StringComparison.Ordinal);
    }

    private Task<IReadOnlyList<object?>> ValuesAsync(string[] names, params string[] parts)
        => Evaluation().ValuesAsync([.. parts.Select(p => new CodePart("ideas.csx", p))], names, Long);

    private CodeEvaluation Evaluation() => new(new HostAssemblies(AppContext.BaseDirectory), folder.Path, ["Analytics.Runner.Documents"], [typeof(NotebookCell).Assembly]);
}
