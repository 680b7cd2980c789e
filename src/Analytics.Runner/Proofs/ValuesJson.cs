using System.IO.Compression;
using System.Text.Json;
using Analytics.Runner.Pages;

namespace Analytics.Runner.Proofs;

/// <summary>The values of a page and the files they come from as JSON, packed by gzip into base64, which any program can unpack.</summary>
/// <remarks>
/// <c>values</c>, a list with an object a part: <c>part</c>, its name, and <c>shows</c>, a list of <c>{"heading": ...}</c>,
/// lines as plain strings, and tables as <c>{"table": caption, "heads": [...], "rows": [[...], ...]}</c>. Then
/// <c>inputs</c>, the files as <c>{"file": ..., "sha256": ...}</c>: digests do not shrink, but those that stand in a table
/// already cost nothing again when they are packed with it.
/// </remarks>
internal static class ValuesJson
{
    // A page is small; what unpacks to more than this was not packed here.
    private const int LargestBytes = 32 << 20;

    public static string Pack(IReadOnlyList<KeyValuePair<string, IReadOnlyList<PageItem>>> values, IReadOnlyList<ProofInput> inputs)
    {
        using var stream = new MemoryStream();
        using (var zip = new GZipStream(stream, CompressionLevel.SmallestSize, leaveOpen: true))
        using (var json = new Utf8JsonWriter(zip, ProofJson.Plain))
        {
            json.WriteStartObject();
            json.WriteStartArray("values");
            foreach (var (part, items) in values)
                WritePart(json, part, items);
            json.WriteEndArray();
            json.WriteStartArray("inputs");
            foreach (var input in inputs)
            {
                json.WriteStartObject();
                json.WriteString("file", input.File);
                json.WriteString("sha256", input.Sha256);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Convert.ToBase64String(stream.GetBuffer(), 0, (int)stream.Length);
    }

    /// <summary>Unpacks what <see cref="Pack"/> packed.</summary>
    /// <exception cref="FormatException">It is something else.</exception>
    /// <exception cref="InvalidDataException">It is not gzip, or unpacks to an unreasonable size.</exception>
    /// <exception cref="JsonException">It is not JSON.</exception>
    public static (IReadOnlyList<KeyValuePair<string, IReadOnlyList<PageItem>>> Values, IReadOnlyList<ProofInput> Inputs) Unpack(string packed)
    {
        using var document = JsonDocument.Parse(PackedText.Unzip(Convert.FromBase64String(packed), LargestBytes), new JsonDocumentOptions { MaxDepth = 8 });
        var values = document.RootElement.GetProperty("values").EnumerateArray().Select(p => new KeyValuePair<string, IReadOnlyList<PageItem>>(
            ProofJson.Text(p, "part"), [.. p.GetProperty("shows").EnumerateArray().Select(Item)]));
        var inputs = document.RootElement.GetProperty("inputs").EnumerateArray().Select(i => new ProofInput(ProofJson.Text(i, "file"), ProofJson.Text(i, "sha256")));
        return ([.. values], [.. inputs]);
    }

    private static void WritePart(Utf8JsonWriter json, string part, IReadOnlyList<PageItem> items)
    {
        json.WriteStartObject();
        json.WriteString("part", part);
        json.WriteStartArray("shows");
        foreach (var item in items)
        {
            switch (item)
            {
                case PageHeading heading:
                    json.WriteStartObject();
                    json.WriteString("heading", heading.Text);
                    json.WriteEndObject();
                    break;
                case PageLine line:
                    json.WriteStringValue(line.Text);
                    break;
                case PageTable table:
                    WriteTable(json, table);
                    break;
            }
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteTable(Utf8JsonWriter json, PageTable table)
    {
        json.WriteStartObject();
        json.WriteString("table", table.Caption);
        json.WritePropertyName("heads");
        WriteTexts(json, table.Heads);
        json.WriteStartArray("rows");
        foreach (var row in table.Rows)
            WriteTexts(json, row);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteTexts(Utf8JsonWriter json, IReadOnlyList<string> texts)
    {
        json.WriteStartArray();
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static PageItem Item(JsonElement item)
        => item.ValueKind == JsonValueKind.String ? new PageLine(item.GetString()!)
            : item.TryGetProperty("heading", out var heading) ? new PageHeading(heading.GetString()!)
            : new PageTable(item.GetProperty("table").GetString()!, Texts(item.GetProperty("heads")), [.. item.GetProperty("rows").EnumerateArray().Select(Texts)]);

    private static string[] Texts(JsonElement list) => [.. list.EnumerateArray().Select(t => t.GetString() ?? "")];
}
