using System.Text.Json;
using System.Text.Json.Nodes;
using Analytics.Runner.Documents;

namespace Analytics.Runner.Outputs;

/// <summary>Outputs in the shape nbformat 4.5 gives them.</summary>
internal static class OutputJson
{
    public static JsonArray ToJson(IEnumerable<CellOutput> outputs, int executionCount)
        => new([.. outputs.Select(o => (JsonNode)ToJson(o, executionCount))]);

    private static JsonObject ToJson(CellOutput output, int executionCount) => output switch
    {
        StreamOutput stream => new JsonObject
        {
            ["name"] = stream.IsError ? "stderr" : "stdout",
            ["output_type"] = "stream",
            ["text"] = CellText.Split(stream.Text),
        },
        DisplayOutput { IsResult: true } result => new JsonObject
        {
            ["data"] = Bundle(result),
            ["execution_count"] = executionCount,
            ["metadata"] = new JsonObject(),
            ["output_type"] = "execute_result",
        },
        DisplayOutput display => new JsonObject
        {
            ["data"] = Bundle(display),
            ["metadata"] = new JsonObject(),
            ["output_type"] = "display_data",
        },
        ErrorOutput { Failure: var failure } => new JsonObject
        {
            ["ename"] = failure.Kind,
            ["evalue"] = failure.Message,
            ["output_type"] = "error",
            ["traceback"] = new JsonArray([.. failure.Trace.Prepend($"{failure.Kind}: {failure.Message}").Select(t => (JsonNode)t)]),
        },
        _ => throw new InvalidOperationException($"No notebook form for {output.GetType().Name}."),
    };

    private static JsonObject Bundle(DisplayOutput display)
    {
        var bundle = new JsonObject();
        foreach (var form in display.Forms)
            bundle[form.MediaType] = IsJson(form.MediaType) ? ParseOrText(form.Content) : CellText.Split(form.Content);
        return bundle;
    }

    private static bool IsJson(string mediaType)
        => mediaType == "application/json" || mediaType.EndsWith("+json", StringComparison.Ordinal);

    private static JsonNode? ParseOrText(string content)
    {
        try
        {
            return JsonNode.Parse(content);
        }
        catch (JsonException)
        {
            return content;
        }
    }
}
