using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Analytics.Runner.Documents;

/// <summary>The checks a notebook's JSON has to pass before anything is done with it.</summary>
internal static class NotebookJson
{
    private static readonly string[] CellTypes = ["code", "markdown", "raw"];

    public static JsonObject ReadRoot(string json, string name)
    {
        var root = ParseStrictly(json, name) as JsonObject
            ?? throw Broken(name, "holds no JSON object", "a notebook is one object with 'cells' and 'nbformat'");
        var major = root["nbformat"] is JsonValue value && value.TryGetValue<int>(out var number) ? number : (int?)null;
        if (major != 4)
        {
            var found = major is null ? "no format number" : string.Create(CultureInfo.InvariantCulture, $"format {major}");
            throw Broken(name, $"has {found}, and only nbformat 4 can be run", "save it again from a current notebook editor");
        }

        return root;
    }

    public static JsonArray ReadCells(JsonObject root, string name)
        => root["cells"] as JsonArray ?? throw Broken(name, "has no list of cells", "a notebook needs 'cells': [...]");

    public static NotebookCell ReadCell(JsonNode? node, int index, string name)
    {
        var place = string.Create(CultureInfo.InvariantCulture, $"cell {index + 1}");
        if (node is not JsonObject cell)
            throw Broken(name, $"has a {place} that is no object", "take the cell out or save the notebook again");
        var type = cell["cell_type"] is JsonValue v && v.TryGetValue<string>(out var text) ? text : "";
        if (!CellTypes.Contains(type))
            throw Broken(name, $"has a {place} of type '{type}'", "known types are code, markdown and raw");
        return new NotebookCell(cell);
    }

    /// <summary>nbformat 4.5 asks for an id on every cell; older files have none. Ids must not change from run to run.</summary>
    public static void GiveMissingIds(IReadOnlyList<NotebookCell> cells)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < cells.Count; i++)
        {
            var id = cells[i].Id;
            for (var n = i + 1; !NotebookCell.IsValidId(id) || !taken.Add(id); n += cells.Count)
                id = string.Create(CultureInfo.InvariantCulture, $"cell-{n}");
            cells[i].Id = id;
        }
    }

    private static JsonNode? ParseStrictly(string json, string name)
    {
        try
        {
            var node = JsonNode.Parse(json, documentOptions: new JsonDocumentOptions { AllowDuplicateProperties = false });
            return node;
        }
        catch (JsonException e)
        {
            var place = e.LineNumber is { } line
                ? string.Create(CultureInfo.InvariantCulture, $" at line {line + 1}")
                : "";
            throw new NotebookException(Fault.Data, $"'{name}' is not valid JSON{place}: it is damaged or no notebook. Open it in a notebook editor and save it again.", e);
        }
    }

    private static NotebookException Broken(string name, string what, string remedy)
        => new(Fault.Data, $"'{name}' {what}; {remedy}.");
}
