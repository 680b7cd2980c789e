using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;

namespace Analytics.Cli.Tests.Verifying;

/// <summary>What somebody does who changes a report and its proof with it.</summary>
internal static class ForgedProof
{
    private const string Begin = "<script type=\"application/json\" id=\"proof\">";

    /// <summary>Puts one text in the place of another of the same length, in the page and in the proof, and makes the digests fit.</summary>
    public static string Consistent(string page, string old, string other)
    {
        Assert.Equal(old.Length, other.Length);
        int begin = page.IndexOf(Begin, StringComparison.Ordinal), end = page.IndexOf("</script>", begin, StringComparison.Ordinal);
        var proof = JsonNode.Parse(page[(begin + Begin.Length)..end])!;
        var shown = page[..begin].Replace(old, other, StringComparison.Ordinal);
        Assert.NotEqual(page[..begin], shown);
        var at = 0;
        foreach (var part in proof["parts"]!.AsArray().TakeWhile(p => p!["name"]!.GetValue<string>() != "foot-end"))
        {
            var length = part!["chars"]!.GetValue<int>();
            part["sha256"] = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(shown.Substring(at, length))));
            at += length;
        }

        // In the data a note stands after the number with a space between.
        proof["packed"] = Pack(Unpack(proof["packed"]!.GetValue<string>()).Replace(Bare(old), Bare(other), StringComparison.Ordinal));
        return shown + Begin + proof.ToJsonString() + page[end..];
    }

    public static string Unpack(string packed)
    {
        using var text = new StreamReader(new GZipStream(new MemoryStream(Convert.FromBase64String(packed)), CompressionMode.Decompress));
        return text.ReadToEnd();
    }

    public static string Pack(string text)
    {
        using var bytes = new MemoryStream();
        using (var zip = new GZipStream(bytes, CompressionLevel.Fastest))
            zip.Write(Encoding.UTF8.GetBytes(text));
        return Convert.ToBase64String(bytes.ToArray());
    }

    private static string Bare(string html) => html.Replace("<td>", "", StringComparison.Ordinal).Replace("</td>", "", StringComparison.Ordinal);
}
