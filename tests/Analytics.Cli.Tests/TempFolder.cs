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
        System.IO.File.WriteAllText(path, NotebookText([.. cells.Select((source, i) => (i == 0 ? "parameters" : "", source))]));
        return path;
    }

    /// <summary>A notebook of code cells, each with its tag or, when that is empty, without one.</summary>
    public static string NotebookText(params (string Tag, string Source)[] cells)
    {
        var json = cells.Select((cell, i) => $$"""
            {"cell_type":"code","id":"c{{i}}","metadata":{"tags":[{{(cell.Tag.Length > 0 ? $"\"{cell.Tag}\"" : "")}}]},"execution_count":null,"outputs":[],
            "source":{{System.Text.Json.JsonSerializer.Serialize(cell.Source)}}}
            """);
        return $$"""{"cells":[{{string.Join(",", json)}}],"metadata":{},"nbformat":4,"nbformat_minor":5}""";
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
