namespace Analytics.Cli.Tests;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TempFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("analytics-tests-").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Writes a notebook of code cells; the first holds its settings.</summary>
    public string Notebook(params string[] cells)
    {
        var path = File("tiny.ipynb");
        var json = cells.Select((source, i) => $$"""
            {"cell_type":"code","id":"c{{i}}","metadata":{"tags":[{{(i == 0 ? "\"parameters\"" : "")}}]},"execution_count":null,"outputs":[],
            "source":{{System.Text.Json.JsonSerializer.Serialize(source)}}}
            """);
        System.IO.File.WriteAllText(path, $$"""{"cells":[{{string.Join(",", json)}}],"metadata":{},"nbformat":4,"nbformat_minor":5}""");
        return path;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
