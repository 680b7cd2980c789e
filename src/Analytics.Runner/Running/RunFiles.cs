using System.Text;
using System.Text.Json.Nodes;
using Analytics.Runner.Documents;
using Analytics.Runner.Files;
using Analytics.Runner.Outputs;
using Analytics.Runner.Pages;
using Analytics.Runner.Settings;

namespace Analytics.Runner.Running;

/// <summary>Makes the files of a run from what happened in it.</summary>
internal sealed class RunFiles(
    RunRequest request, NotebookDocument document, IReadOnlyList<CellLog> cells, IReadOnlyList<Setting> settings, string sha256, DateTimeOffset started)
{
    private const string TableType = "text/csv";
    private const string MetadataKey = "analytics_run";

    private readonly HashSet<string> given = [.. request.Settings.Select(s => s.Key)];
    private readonly NeutralPlaces places = NeutralPlaces.Of(request.Notebook, settings);

    public ResultContent Make(RunEnding ending, TimeSpan took)
    {
        var outputs = cells.ToDictionary(c => c, c => c.Outputs.Snapshot());
        if (ending == RunEnding.Failed && !outputs.Values.Any(o => o.OfType<ErrorOutput>().Any()))
            BlameTheLast(outputs);
        outputs = outputs.ToDictionary(o => o.Key, o => ForReaders(o.Value));
        var provenance = new Provenance
        {
            NotebookSha256 = sha256,
            Settings = settings,
            Given = given,
            Inserted = request.Inserted?.Files ?? [],
            Library = request.Library,
            Ending = ending switch { RunEnding.Complete => "complete", RunEnding.Failed => "failed", _ => "timed out" },
            Started = started,
            Took = took,
        };
        return new ResultContent(Encoding.UTF8.GetBytes(Page(outputs, provenance)), Notebook(outputs, provenance))
        {
            Tables = [.. cells.SelectMany(c => outputs[c]).OfType<DisplayOutput>().Select(o => o.Form(TableType)).OfType<string>().Select(TableBytes)],
        };
    }

    // With the mark by which spreadsheets know the encoding.
    private static byte[] TableBytes(string text) => [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)];

    private IReadOnlyList<CellOutput> ForReaders(IReadOnlyList<CellOutput> outputs) => [.. outputs.Select(places.Neutral)];

    // The run was cut off inside a cell without a word from the kernel.
    private void BlameTheLast(Dictionary<CellLog, IReadOnlyList<CellOutput>> outputs)
    {
        if (cells.LastOrDefault(c => c.ExecutionCount is not null) is { } last)
            outputs[last] = [.. outputs[last], new ErrorOutput(new CellFailure("ProcessEnded", "The cell ended the whole process.", null, []))];
    }

    private string Page(Dictionary<CellLog, IReadOnlyList<CellOutput>> outputs, Provenance provenance) => ReportPage.Make(new PageModel
    {
        Notebook = Path.GetFileName(request.Notebook),
        Provenance = provenance,
        Charts = request.Charts,
        Cells = [.. cells.Where(c => c.Cell.IsCode || c.Cell.IsMarkdown).Select(c => new PageCell
        {
            IsCode = c.Cell.IsCode,
            Label = c.Label,
            Anchor = c.Anchor,
            IsOfOtherFile = c.Cell.HasTag(CellTag.InjectedCode),
            Source = c.Cell.HasTag(CellTag.InjectedSettings) ? SettingsForReaders() : places.Neutral(c.Cell.Source),
            Outputs = outputs[c],
            LeaveOut = c.Cell.HasTag(CellTag.LeaveOut),
            WasRun = !c.Cell.IsCode || c.ExecutionCount is not null,
        })],
    });

    private string SettingsForReaders() => string.Join("\n", settings.Where(s => given.Contains(s.Name)).Select(SettingText.ForReaders));

    private byte[] Notebook(Dictionary<CellLog, IReadOnlyList<CellOutput>> outputs, Provenance provenance)
    {
        foreach (var cell in cells)
        {
            if (cell.Cell.HasTag(CellTag.InjectedSettings))
                cell.Cell.SetSource("// Settings given for this run. Of a folder only its own name is told.\n" + SettingsForReaders());
            else if (places.Neutral(cell.Cell.Source) is var source && source != cell.Cell.Source)
                cell.Cell.SetSource(source);
        }

        foreach (var cell in cells.Where(c => c.Cell.IsCode))
            cell.Cell.SetOutputs(cell.ExecutionCount, OutputJson.ToJson(outputs[cell], cell.ExecutionCount ?? 0));
        document.Metadata["kernelspec"] ??= new JsonObject { ["display_name"] = ".NET (C#)", ["language"] = "C#", ["name"] = ".net-csharp" };
        document.Metadata["language_info"] ??= new JsonObject { ["name"] = "C#" };
        document.Metadata[MetadataKey] = ProvenanceJson.ToJson(Path.GetFileName(request.Notebook), provenance);
        return document.ToUtf8Json();
    }
}
