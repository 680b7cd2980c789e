using Analytics.Runner.Kernels;
using Analytics.Runner.Outputs;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Analytics.Runner.Tests.Kernels;

/// <summary>Files that cells take in, found from the notebook's folder.</summary>
[Collection(KernelTests.Name)]
public sealed class CellSourcesTests : IDisposable
{
    private readonly string before = Environment.CurrentDirectory;
    private readonly TempFolder folder = new();
    private readonly InteractiveKernel kernel = new(new HostAssemblies(AppContext.BaseDirectory), () => { });

    public CellSourcesTests() => Environment.CurrentDirectory = folder.Path;

    public void Dispose()
    {
        kernel.Dispose();
        Environment.CurrentDirectory = before;
        folder.Dispose();
    }

    [Fact]
    public async Task Load_FileBesideTheNotebook_GivesItsNames()
    {
        File.WriteAllText(folder.File("helper.csx"), "int Twice(int n) => 2 * n;");
        var (failure, outputs) = await Run("#load \"helper.csx\"\n$\"{Twice(21)}\"");
        Assert.Null(failure);
        Assert.Equal("42", Plain(Assert.Single(outputs)));
    }

    [Fact]
    public async Task Load_FileWithAMistake_NamesFileAndLineInIt()
    {
        File.WriteAllText(folder.File("helper.csx"), "int a = 1;\nint b = nothing;");
        var (failure, _) = await Run("#load \"helper.csx\"");
        Assert.Null(failure!.Line);
        Assert.Contains("'nothing' does not exist", failure.Message, StringComparison.Ordinal);
        Assert.EndsWith("(helper.csx, line 2)", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Load_FileThatAnEarlierCellWrites_IsReadAfterwards()
    {
        string[] cells = ["System.IO.File.WriteAllText(\"made.csx\", \"var made = 7;\");", "#load \"made.csx\"\n$\"{made}\"", "$\"{made + 1}\""];
        kernel.Expect([.. cells.Select(c => new CellCode("cell", c))]);
        Assert.Null((await Run(cells[0])).Failure);
        Assert.Equal("7", Plain(Assert.Single((await Run(cells[1])).Outputs)));
        Assert.Equal("8", Plain(Assert.Single((await Run(cells[2])).Outputs)));
    }

    [Fact]
    public async Task Reference_RelativeFileThatNeedsAnother_WorksWithBoth()
    {
        Directory.CreateDirectory(folder.File("lib"));
        var deep = Compile("DeepPart", "namespace Deep; public class Number { public int Value => 5; }");
        Compile("UpperPart", "namespace Upper; public class Maker { public static Deep.Number Make() => new(); }", deep);
        var (failure, outputs) = await Run("#r \"lib/UpperPart.dll\"\n$\"{Upper.Maker.Make().Value}\"");
        Assert.Null(failure);
        Assert.Equal("5", Plain(Assert.Single(outputs)));
    }

    [Fact]
    public async Task Reference_FileRewrittenBeforeItIsUsed_IsTheNewOne()
    {
        Directory.CreateDirectory(folder.File("lib"));
        var old = Compile("RewrittenPart", "namespace Rewritten; public class Old { }");
        var copy = folder.File("copy.dll");
        File.Move(old, copy);
        Assert.Null((await Run("#r \"copy.dll\"\nstring name = nameof(Rewritten.Old);")).Failure);
        File.Move(Compile("RewrittenTwo", "namespace Rewritten; public class New { }"), copy, overwrite: true);
        File.SetLastWriteTimeUtc(copy, DateTime.UtcNow.AddSeconds(5));
        using var next = new InteractiveKernel(new HostAssemblies(AppContext.BaseDirectory), () => { });
        Assert.Null(await next.RunAsync(new CellCode("cell 1", "#r \"copy.dll\"\nstring name = nameof(Rewritten.New);"), new OutputList()));
    }

    [Fact]
    public async Task Reference_AssemblyOfTheRunTimeByName_Works()
    {
        var (failure, outputs) = await Run("#r \"System.Net.Primitives\"\nSystem.Net.IPAddress.Loopback.ToString()");
        Assert.Null(failure);
        Assert.Equal("127.0.0.1", Plain(Assert.Single(outputs)));
    }

    private string Compile(string name, string source, params string[] references)
    {
        var path = folder.File($"lib/{name}.dll");
        string[] all = [typeof(object).Assembly.Location, Path.Combine(Path.GetDirectoryName(typeof(object).Assembly.Location)!, "System.Runtime.dll"), .. references];
        var made = CSharpCompilation.Create(name, [CSharpSyntaxTree.ParseText(source)],
            all.Select(r => MetadataReference.CreateFromFile(r)), new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary)).Emit(path);
        Assert.True(made.Success, string.Join("\n", made.Diagnostics));
        return path;
    }

    private async Task<(CellFailure? Failure, IReadOnlyList<CellOutput> Outputs)> Run(string source)
    {
        var outputs = new OutputList();
        var failure = await kernel.RunAsync(new CellCode("cell", source), outputs);
        return (failure, outputs.Snapshot());
    }

    private static string? Plain(CellOutput output) => Assert.IsType<DisplayOutput>(output).Form("text/plain");
}
