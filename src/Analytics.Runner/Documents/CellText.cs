using System.Text.Json.Nodes;

namespace Analytics.Runner.Documents;

/// <summary>nbformat writes text as one string or as a list of lines that keep their line ends.</summary>
internal static class CellText
{
    public static string Join(JsonNode? node) => node switch
    {
        JsonArray lines => string.Concat(lines.Select(One)),
        _ => One(node),
    };

    public static JsonArray Split(string text)
    {
        var lines = new JsonArray();
        for (var start = 0; start < text.Length;)
        {
            var feed = text.IndexOf('\n', start);
            var end = feed < 0 ? text.Length : feed + 1;
            lines.Add(text[start..end]);
            start = end;
        }

        return lines;
    }

    private static string One(JsonNode? node) => node is JsonValue value && value.TryGetValue<string>(out var text) ? text : "";
}
