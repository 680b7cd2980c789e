using Analytics.Runner.Kernels;
using Analytics.Runner.Outputs;

namespace Analytics.Runner.Tests.Kernels;

[Collection(KernelTests.Name)]
public sealed class InteractiveKernelTests : IDisposable
{
    private readonly InteractiveKernel kernel = new(new HostAssemblies(AppContext.BaseDirectory), () => { });

    public void Dispose() => kernel.Dispose();

    [Fact]
    public async Task RunAsync_OutputsOfAllKinds_ComeInOrder()
    {
        var (failure, outputs) = await Run("Console.Write(\"a\"); Console.WriteLine(\"b\"); Console.Error.Write(\"e\"); display(\"shown\"); \"result\"");
        Assert.Null(failure);
        Assert.Equal(new StreamOutput(false, "ab\n"), outputs[0]);
        Assert.Equal(new StreamOutput(true, "e"), outputs[1]);
        Assert.Equal(("shown", false), Plain(outputs[2]));
        Assert.Equal(("result", true), Plain(outputs[3]));
        Assert.Equal(4, outputs.Count);
    }

    [Fact]
    public async Task RunAsync_UpdatedDisplays_AreReplacedInPlace()
    {
        var (_, outputs) = await Run("display(\"head\"); var x = display(\"x1\"); x.Update(\"x2\"); var y = display(\"y1\"); y.Update(\"y2\"); x.Update(\"x3\");");
        Assert.Equal([("head", false), ("x3", false), ("y2", false)], outputs.Select(Plain));
    }

    [Fact]
    public async Task RunAsync_HtmlValue_ComesWithPlainText()
    {
        var (_, outputs) = await Run("new[] { 1, 2 }");
        var display = Assert.IsType<DisplayOutput>(Assert.Single(outputs));
        Assert.NotNull(display.Form("text/html"));
        Assert.Contains("1", display.Form("text/plain"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_CompileError_NamesLineAndMessage()
    {
        var (failure, _) = await Run("var a = 1;\n\nvar b = nothing + 1;");
        Assert.Equal("CompileError", failure!.Kind);
        Assert.Equal(3, failure.Line);
        Assert.Contains("'nothing' does not exist", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task RunAsync_RunTimeError_NamesLineTypeAndThePlacesOnTheWay()
    {
        await Run("int Half(int n)\n{\n    return n / (n - n);\n}", "cell 1");
        var (failure, _) = await Run("\nvar r =\n    Half(4);", "cell 2");
        Assert.Equal("DivideByZeroException", failure!.Kind);
        Assert.Equal("Attempted to divide by zero.", failure.Message);
        Assert.Equal(["  at cell 1, line 3", "  at cell 2, line 3"], failure.Trace);
        Assert.Equal(3, failure.Line);
    }

    [Fact]
    public async Task RunAsync_AfterAFailure_KeepsEarlierVariables()
    {
        await Run("var kept = 41;");
        await Run("throw new Exception(\"no\");");
        var (failure, outputs) = await Run("(kept + 1).ToString()");
        Assert.Null(failure);
        Assert.Equal(("42", true), Plain(outputs[0]));
    }

    [Fact]
    public async Task RunAsync_ReferenceToAnAssemblyOfTheHost_GivesTheHostsTypes()
    {
        const string Source = """
            #r "../nowhere/Analytics.Runner.dll"
            System.Runtime.Loader.AssemblyLoadContext.GetLoadContext(typeof(Analytics.Runner.NotebookException).Assembly).Name
            """;
        var (failure, outputs) = await Run(Source);
        Assert.Null(failure);
        Assert.Equal(("Default", true), Plain(outputs[0]));
    }

    [Fact]
    public async Task RunAsync_MissingReference_IsACompileErrorThatNamesIt()
    {
        var (failure, _) = await Run("#r \"../nowhere/Missing.dll\"");
        Assert.Equal("CompileError", failure!.Kind);
        Assert.Contains("Missing.dll", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Formatters_OfAnEarlierNotebook_DoNotShow()
    {
        await Run("Microsoft.DotNet.Interactive.Formatting.Formatter.Register<Version>((v, w) => w.Write(\"mine\"), \"text/plain\");");
        using var next = new InteractiveKernel(new HostAssemblies(AppContext.BaseDirectory), () => { });
        var list = new OutputList();
        await next.RunAsync(new CellCode("cell 1", "display(new Version(1, 2), \"text/plain\");"), list);
        Assert.DoesNotContain("mine", Plain(Assert.Single(list.Snapshot())).Text, StringComparison.Ordinal);
    }

    private async Task<(CellFailure? Failure, IReadOnlyList<CellOutput> Outputs)> Run(string source, string label = "cell 1")
    {
        var outputs = new OutputList();
        var failure = await kernel.RunAsync(new CellCode(label, source), outputs);
        return (failure, outputs.Snapshot());
    }

    private static (string Text, bool IsResult) Plain(CellOutput output)
    {
        var display = Assert.IsType<DisplayOutput>(output);
        return (display.Form("text/plain") ?? "", display.IsResult);
    }
}

/// <summary>Kernels share console, culture, folder and formatters of the process: one at a time.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public class KernelTests
{
    public const string Name = "kernel";
}
