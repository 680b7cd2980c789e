using System.Security.Cryptography;
using Analytics.Runner.Documents;
using Analytics.Runner.Files;
using Analytics.Runner.Settings;
using Analytics.Runner.Sources;

namespace Analytics.Runner.Running;

/// <summary>A notebook that was read and has its settings, before its first cell runs.</summary>
internal sealed class PreparedRun
{
    private PreparedRun(RunRequest request, NotebookDocument document, IReadOnlyList<Setting> settings, byte[] bytes, DateTimeOffset started)
    {
        Cells = CellLog.For(document, request.Inserted?.Parts ?? []);
        Files = new RunFiles(request, document, Cells, settings, Convert.ToHexStringLower(SHA256.HashData(bytes)), started);
    }

    public IReadOnlyList<CellLog> Cells { get; }

    public RunFiles Files { get; }

    public static PreparedRun Of(RunRequest request, DateTimeOffset started)
    {
        var name = Path.GetFileName(request.Notebook);
        var bytes = NotebookFile.Read(request.Notebook);
        var document = NotebookDocument.Parse(NotebookFile.Decode(bytes, name), name);
        var settings = SettingsForRun.Apply(document, name, request.Settings);
        InsertedCode.Apply(document, name, request.Inserted);
        return new PreparedRun(request, document, settings, bytes, started);
    }
}
