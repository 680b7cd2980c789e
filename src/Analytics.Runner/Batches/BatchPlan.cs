using System.Security.Cryptography;
using System.Text.Json;
using Analytics.Runner.Files;
using Analytics.Runner.Pages;
using Analytics.Runner.Running;
using Analytics.Runner.Settings;

namespace Analytics.Runner.Batches;

/// <summary>What a batch will do, found before anything is done: names of files, and what each page follows from.</summary>
internal sealed class BatchPlan
{
    private readonly BatchRequest request;
    private readonly string notebookSha256;
    private readonly IReadOnlyDictionary<string, string> names;
    private readonly string[] common;

    private BatchPlan(BatchRequest request, byte[] notebook)
    {
        this.request = request;
        notebookSha256 = Convert.ToHexStringLower(SHA256.HashData(notebook));
        names = PageNames.For(request.AllValues.Concat(request.Items.Select(i => i.Value)));
        common = [notebookSha256, request.Run.Library, .. SettingsOf(request), .. request.MadeFrom.OrderBy(m => m.Key, StringComparer.Ordinal).Select(m => $"{m.Key}: {m.Value}")];
    }

    public string Folder => request.Run.OutFolder;

    public string JournalFile => Path.Combine(Folder, Stem + "-batch.json");

    public string LockFile => Path.Combine(Folder, $".{Stem}-batch.lock");

    /// <summary>Every file a batch of this notebook may write in the folder, by name.</summary>
    public IEnumerable<string> FileNames => names.Values.SelectMany(n => (string[])[$"{Stem}-{n}.html", $"{Stem}-{n}.ipynb", $"{Stem}-{n}.csv"]).Append(Path.GetFileName(JournalFile));

    private string Stem => Path.GetFileNameWithoutExtension(request.Run.Notebook);

    /// <summary>Plans a batch.</summary>
    /// <exception cref="NotebookException">The notebook or a setting cannot be used.</exception>
    public static BatchPlan Of(BatchRequest request)
    {
        if (request.Items.Count == 0)
            throw new NotebookException(Fault.Usage, $"There is no value of '{request.Setting}' to make a page for.");
        var notebook = NotebookFile.Read(request.Run.Notebook);
        // Files are written while the cells of the next page run, and those have the notebook's folder as the current one.
        var run = request.Run with { Notebook = Path.GetFullPath(request.Run.Notebook), OutFolder = Path.GetFullPath(request.Run.OutFolder) };
        return new BatchPlan(request with { Run = run }, notebook);
    }

    public ResultTarget TargetOf(BatchItem item) => ResultTarget.For(request.Run, $"{Stem}-{names[item.Value]}");

    public RunRequest RunFor(BatchItem item) => request.Run with { Settings = [.. request.Run.Settings, new(request.Setting, item.Value)] };

    /// <summary>Digest of all a page follows from.</summary>
    public string MadeFrom(string value)
        => Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes((string[])[.. common, value])));

    /// <summary>All pages of a batch have to come from one notebook.</summary>
    /// <exception cref="NotebookException">It was changed since the batch began.</exception>
    public void CheckNotebook()
    {
        if (Convert.ToHexStringLower(SHA256.HashData(NotebookFile.Read(request.Run.Notebook))) != notebookSha256)
            throw new NotebookException(Fault.Data, $"'{request.Run.Notebook}' was changed while its pages were made. Give the same command again: pages of the notebook as it was are made anew.");
    }

    private static IEnumerable<string> SettingsOf(BatchRequest request)
    {
        var name = Path.GetFileName(request.Run.Notebook);
        var settings = NotebookSettings.Read(request.Run.Notebook, [.. request.Run.Settings, new(request.Setting, request.Items[0].Value)]);
        var own = settings.First(s => s.Name == request.Setting);
        if (own.Type.Name != "string")
            throw new NotebookException(Fault.Usage, $"Setting '{own.Name}' of '{name}' is {own.Type.Expects} ({own.Type.CodeName}); only a string setting can have a page for each value.");
        // As the page shows them: where a folder lies is not part of what a page says, and the data have a digest of their own.
        return settings.Where(s => s != own).Select(SettingText.ForReaders).Select(s => s.ToString()).Order(StringComparer.Ordinal);
    }
}
