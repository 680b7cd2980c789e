using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Analytics.Runner.Documents;

/// <summary>One cell of a notebook, a view on its JSON object.</summary>
public sealed partial class NotebookCell
{
    internal NotebookCell(JsonObject node) => Node = node;

    /// <summary>Identifier, unique in the notebook.</summary>
    public string Id
    {
        get => Node["id"] is JsonValue value && value.TryGetValue<string>(out var id) ? id : "";
        internal set => Node["id"] = value;
    }

    /// <summary>Whether the cell holds code.</summary>
    public bool IsCode => HasType("code");

    /// <summary>Whether the cell holds Markdown prose.</summary>
    public bool IsMarkdown => HasType("markdown");

    /// <summary>The text of the cell with line feeds.</summary>
    public string Source => CellText.Join(Node["source"]).ReplaceLineEndings("\n");

    /// <summary>The tags given to the cell.</summary>
    public IReadOnlyList<string> Tags
        => Node["metadata"] is JsonObject metadata && metadata["tags"] is JsonArray tags
            ? [.. tags.OfType<JsonValue>().Select(t => t.TryGetValue<string>(out var tag) ? tag : "").Where(t => t.Length > 0)]
            : [];

    internal JsonObject Node { get; }

    /// <summary>Makes a code cell without outputs.</summary>
    /// <param name="id">Identifier: 1 to 64 letters, digits, <c>-</c> or <c>_</c>.</param>
    /// <param name="source">Its code.</param>
    /// <param name="tags">Its tags.</param>
    public static NotebookCell Code(string id, string source, params ReadOnlySpan<string> tags)
    {
        if (!IsValidId(id))
            throw new ArgumentException($"'{id}' is no cell id: 1 to 64 letters, digits, - or _.", nameof(id));
        var list = new JsonArray();
        foreach (var tag in tags)
            list.Add(tag);
        return new NotebookCell(new JsonObject
        {
            ["cell_type"] = "code",
            ["execution_count"] = null,
            ["id"] = id,
            ["metadata"] = new JsonObject { ["tags"] = list },
            ["outputs"] = new JsonArray(),
            ["source"] = CellText.Split(source),
        });
    }

    /// <summary>Whether the cell carries a tag.</summary>
    /// <param name="tag">The tag.</param>
    public bool HasTag(string tag) => Tags.Contains(tag, StringComparer.Ordinal);

    internal static bool IsValidId(string id) => IdShape().IsMatch(id);

    /// <summary>Puts outputs in place of those the cell had.</summary>
    internal void SetOutputs(int? executionCount, JsonArray outputs)
    {
        Node["execution_count"] = executionCount;
        Node["outputs"] = outputs;
    }

    /// <summary>Puts another text in place of the cell's own.</summary>
    internal void SetSource(string source) => Node["source"] = CellText.Split(source);

    private bool HasType(string type) => Node["cell_type"]!.GetValue<string>() == type;

    [GeneratedRegex(@"\A[a-zA-Z0-9_-]{1,64}\z")]
    private static partial Regex IdShape();
}
