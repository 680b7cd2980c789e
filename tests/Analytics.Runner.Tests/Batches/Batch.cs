using System.Text.RegularExpressions;
using Analytics.Runner.Batches;
using Analytics.Runner.Files;
using Analytics.Runner.Kernels;
using Analytics.Runner.Running;
using Analytics.Runner.Tests.Running;

namespace Analytics.Runner.Tests.Batches;

/// <summary>A batch over a tiny notebook in a folder of its own.</summary>
internal sealed class Batch : IDisposable
{
    public TempFolder Folder { get; } = new();

    public string Out => Folder.File("out");

    public string File(string name) => Path.Combine(Out, name);

    public string Read(string name) => System.IO.File.ReadAllText(File(name));

    public IEnumerable<string?> Files() => Directory.GetFileSystemEntries(Out).Select(Path.GetFileName).Order(StringComparer.Ordinal);

    /// <summary>A request for a page per value, of the notebook as it lies in the folder.</summary>
    public BatchRequest Request(params string[] values) => new()
    {
        Run = new RunRequest { Notebook = Folder.File("tiny.ipynb"), OutFolder = Out, Library = "Kit 1.0", Timeout = TimeSpan.FromMinutes(2) },
        Setting = "who",
        Items = [.. values.Select(v => new BatchItem(v, v))],
        AllValues = values,
    };

    public static Task<BatchResult> RunAsync(BatchRequest request, IBatchProgress? progress = null, CancellationToken cancellation = default)
        => new BatchRunner(NewKernel, new ResultFiles(), TimeProvider.System).RunAsync(request, progress ?? new BatchHeard(), cancellation);

    /// <summary>The same notebook run alone with one value, into a folder of its own; the text of its page and notebook without times.</summary>
    public async Task<(string Page, string Notebook)> AloneAsync(BatchRequest request, string value)
    {
        var run = request.Run with { OutFolder = Folder.File("alone"), Settings = [.. request.Run.Settings, new(request.Setting, value)] };
        var result = await new NotebookRunner(NewKernel, new ResultFiles(), TimeProvider.System).RunAsync(run, new Silent());
        return (Steady(System.IO.File.ReadAllText(result.PageFile)), Steady(System.IO.File.ReadAllText(result.NotebookFile)));
    }

    public static string Steady(string text)
        => Regex.Replace(Regex.Replace(text, "<!--varies-->.*?<!--/varies-->", "", RegexOptions.Singleline), "\"varies\": \\{.*?\\}", "", RegexOptions.Singleline);

    public void Dispose() => Folder.Dispose();

    private static InteractiveKernel NewKernel() => new(new HostAssemblies(AppContext.BaseDirectory), () => { });
}
