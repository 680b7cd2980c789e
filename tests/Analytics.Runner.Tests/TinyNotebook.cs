using System.Text;
using System.Text.Json.Nodes;

namespace Analytics.Runner.Tests;

/// <summary>Builds the small notebooks the tests run, one per situation.</summary>
internal sealed class TinyNotebook
{
    private readonly JsonArray cells = [];

    public TinyNotebook Markdown(string source, params string[] tags) => Add("markdown", source, tags);

    public TinyNotebook Code(string source, params string[] tags) => Add("code", source, tags);

    public TinyNotebook Settings(string source) => Code(source, "parameters");

    public string ToJson() => new JsonObject
    {
        ["cells"] = cells.DeepClone(),
        ["metadata"] = new JsonObject(),
        ["nbformat"] = 4,
        ["nbformat_minor"] = 5,
    }.ToJsonString();

    /// <summary>Writes the notebook into a folder and says where.</summary>
    public string WriteTo(TempFolder folder, string name = "tiny.ipynb")
    {
        var path = Path.Combine(folder.Path, name);
        File.WriteAllText(path, ToJson(), new UTF8Encoding(false));
        return path;
    }

    private TinyNotebook Add(string type, string source, string[] tags)
    {
        var cell = new JsonObject
        {
            ["cell_type"] = type,
            ["id"] = $"tiny-{cells.Count + 1}",
            ["metadata"] = new JsonObject { ["tags"] = new JsonArray([.. tags.Select(t => (JsonNode)t)]) },
            ["source"] = source,
        };
        if (type == "code")
        {
            cell["execution_count"] = null;
            cell["outputs"] = new JsonArray();
        }

        cells.Add((JsonNode)cell);
        return this;
    }
}
