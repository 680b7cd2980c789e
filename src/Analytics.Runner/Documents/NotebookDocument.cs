using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Analytics.Runner.Documents;

/// <summary>
/// A notebook file in nbformat 4. The JSON tree itself is kept, so keys this class knows nothing about
/// come out as they went in; only what a run has to change is changed.
/// </summary>
public sealed class NotebookDocument
{
    private static readonly JsonWriterOptions WriterOptions = new()
    {
        Indented = true,
        IndentSize = 1,
        NewLine = "\n",
        // The file is UTF-8 JSON, not HTML: names stay readable in it.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private readonly JsonObject root;
    private readonly List<NotebookCell> cells;

    private NotebookDocument(JsonObject root, List<NotebookCell> cells)
    {
        this.root = root;
        this.cells = cells;
    }

    /// <summary>The cells, in order.</summary>
    public IReadOnlyList<NotebookCell> Cells => cells;

    /// <summary>The notebook's own metadata.</summary>
    public JsonObject Metadata => (JsonObject)root["metadata"]!;

    /// <summary>Reads a notebook.</summary>
    /// <param name="json">The text of the file.</param>
    /// <param name="name">What to call the file in messages.</param>
    /// <exception cref="NotebookException">The text is no notebook in nbformat 4.</exception>
    public static NotebookDocument Parse(string json, string name)
    {
        ArgumentNullException.ThrowIfNull(json);
        var root = NotebookJson.ReadRoot(json, name);
        var array = NotebookJson.ReadCells(root, name);
        var cells = array.Select((node, index) => NotebookJson.ReadCell(node, index, name)).ToList();
        NotebookJson.GiveMissingIds(cells);
        root["nbformat_minor"] = Math.Max(5, root["nbformat_minor"]?.GetValue<int>() ?? 0);
        if (root["metadata"] is not JsonObject)
            root["metadata"] = new JsonObject();
        return new NotebookDocument(root, cells);
    }

    /// <summary>Puts a new cell after another one.</summary>
    /// <param name="cell">The cell to add.</param>
    /// <param name="after">The cell it follows.</param>
    public void InsertAfter(NotebookCell cell, NotebookCell after)
    {
        ArgumentNullException.ThrowIfNull(cell);
        var index = cells.IndexOf(after);
        ArgumentOutOfRangeException.ThrowIfNegative(index, nameof(after));
        cells.Insert(index + 1, cell);
        ((JsonArray)root["cells"]!).Insert(index + 1, cell.Node);
    }

    /// <summary>Takes a cell out.</summary>
    /// <param name="cell">The cell to remove.</param>
    public void Remove(NotebookCell cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        if (cells.Remove(cell))
            ((JsonArray)root["cells"]!).Remove(cell.Node);
    }

    /// <summary>The notebook as UTF-8 JSON: indented by one, line feeds, a final newline.</summary>
    public byte[] ToUtf8Json()
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, WriterOptions))
            root.WriteTo(writer);
        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    /// <inheritdoc/>
    public override string ToString() => Encoding.UTF8.GetString(ToUtf8Json());
}
