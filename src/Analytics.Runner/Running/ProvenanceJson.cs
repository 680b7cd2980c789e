using System.Globalization;
using System.Text.Json.Nodes;
using Analytics.Runner.Pages;

namespace Analytics.Runner.Running;

/// <summary>Provenance in a notebook's metadata. Only the object <c>varies</c> differs from run to run.</summary>
internal static class ProvenanceJson
{
    public static JsonObject ToJson(string notebook, Provenance provenance)
    {
        var settings = new JsonObject();
        foreach (var setting in provenance.Settings.Select(SettingText.ForReaders).OrderBy(s => s.Name, StringComparer.Ordinal))
            settings[setting.Name] = setting.Literal;
        var with = new JsonArray([.. provenance.Inserted.Select(f => (JsonNode)new JsonObject { ["file"] = f.Name, ["sha256"] = f.Sha256 })]);
        var json = new JsonObject
        {
            ["ending"] = provenance.Ending,
            ["library"] = provenance.Library,
            ["notebook"] = notebook,
            ["notebook_sha256"] = provenance.NotebookSha256,
            ["settings"] = settings,
            ["varies"] = new JsonObject
            {
                ["seconds"] = Math.Round(provenance.Took.TotalSeconds, 1),
                ["started"] = provenance.Started.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture),
            },
        };
        if (with.Count > 0)
            json["with"] = with;
        return json;
    }
}
