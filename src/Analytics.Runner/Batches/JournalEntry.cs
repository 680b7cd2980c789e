using System.Text.Json.Nodes;

namespace Analytics.Runner.Batches;

/// <summary>What a batch notes of one page. Nothing in it depends on when the page was made.</summary>
/// <param name="Value">The setting's value.</param>
/// <param name="MadeFrom">Digest of all the page follows from.</param>
/// <param name="IsComplete">Whether every cell ran.</param>
/// <param name="Page">File name of the page.</param>
/// <param name="PageSha256">Digest of the page, but for times.</param>
/// <param name="NotebookSha256">Digest of the executed notebook beside it, but for times.</param>
internal sealed record JournalEntry(string Value, string MadeFrom, bool IsComplete, string Page, string PageSha256, string NotebookSha256)
{
    public static JournalEntry? From(JsonNode? node)
    {
        if (node is not JsonObject json)
            return null;
        var complete = json["complete"] is JsonValue flag && flag.TryGetValue<bool>(out var yes) && yes;
        return Text("value") is { } value && Text("made_from") is { } from && Text("page") is { } page && Text("page_sha256") is { } digest && Text("notebook_sha256") is { } notebook
            ? new JournalEntry(value, from, complete, page, digest, notebook)
            : null;

        string? Text(string key) => json[key] is JsonValue text && text.TryGetValue<string>(out var found) ? found : null;
    }

    public JsonObject ToJson() => new()
    {
        ["value"] = Value,
        ["page"] = Page,
        ["complete"] = IsComplete,
        ["made_from"] = MadeFrom,
        ["page_sha256"] = PageSha256,
        ["notebook_sha256"] = NotebookSha256,
    };
}
