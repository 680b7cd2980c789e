using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;

namespace Analytics.Runner.Proofs;

/// <summary>A proof as the text that stands in a page.</summary>
internal static class ProofJson
{
    // Letters stay as they are, < and > and & never do: nothing in here can end the element it stands in.
    internal static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    public static string Write(Proof proof)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Plain))
        {
            json.WriteStartObject();
            json.WriteNumber("format", Proof.Format);
            json.WriteString("notebook", proof.Notebook);
            json.WriteString("notebook_sha256", proof.NotebookSha256);
            json.WriteString("library", proof.Library);
            json.WriteString("ending", proof.Ending);
            List(json, "settings", proof.Settings, s =>
            {
                json.WriteString("name", s.Name);
                json.WriteString("value", s.Value);
                if (s.Given)
                    json.WriteBoolean("given", true);
                if (s.IsPath)
                    json.WriteBoolean("path", true);
            });
            if (proof.With.Count > 0)
            {
                List(json, "with", proof.With, f =>
                {
                    json.WriteString("file", f.File);
                    json.WriteString("sha256", f.Sha256);
                });
            }

            List(json, "parts", proof.Parts, p =>
            {
                json.WriteString("name", p.Name);
                json.WriteNumber("chars", p.Length);
                json.WriteString("sha256", p.Sha256);
            });
            json.WriteString("packed", ValuesJson.Pack(proof.Values, proof.Inputs));
            json.WriteEndObject();
        }

        return System.Text.Encoding.UTF8.GetString(stream.GetBuffer().AsSpan(0, (int)stream.Length));
    }

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    /// <exception cref="FormatException">It is something else.</exception>
    public static Proof Read(string text)
    {
        try
        {
            using var document = JsonDocument.Parse(text, new JsonDocumentOptions { AllowDuplicateProperties = false, MaxDepth = 8 });
            var root = document.RootElement;
            if (root.GetProperty("format").GetInt32() != Proof.Format)
                throw new FormatException("it was written by another version of this program");
            var (values, inputs) = ValuesJson.Unpack(Text(root, "packed"));
            return new Proof
            {
                Notebook = Text(root, "notebook"),
                NotebookSha256 = Text(root, "notebook_sha256"),
                Library = Text(root, "library"),
                Ending = Text(root, "ending"),
                Settings = [.. root.GetProperty("settings").EnumerateArray().Select(s => new ProofSetting(Text(s, "name"), Text(s, "value"), Says(s, "given"), Says(s, "path")))],
                Inputs = inputs,
                With = root.TryGetProperty("with", out var with) ? [.. with.EnumerateArray().Select(f => new ProofInput(Text(f, "file"), Text(f, "sha256")))] : [],
                Parts = [.. root.GetProperty("parts").EnumerateArray().Select(p => new ProofPart(Text(p, "name"), p.GetProperty("chars").GetInt32(), Text(p, "sha256")))],
                Values = values,
            };
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or InvalidDataException)
        {
            throw new FormatException("it is not in the form this program writes", e);
        }
    }

    private static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> list, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in list)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    internal static string Text(JsonElement of, string name) => of.GetProperty(name).GetString() ?? throw new FormatException($"it has no {name}");

    private static bool Says(JsonElement of, string name) => of.TryGetProperty(name, out var value) && value.GetBoolean();
}
