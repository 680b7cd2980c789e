using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Analytics.Cli.Tests.Verifying;

/// <summary>What is no report, or not a whole one, or one made to do harm: clear words, no trace of the program's inside.</summary>
public sealed class NoReportTests : IDisposable
{
    private const string Foot = "<footer>\n<dl>\n<!--varies--><!--/varies-->\n</dl>\n</footer>\n";

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Verify_MissingFileOrFolder_IsAUsageError()
    {
        Assert.Equal((1, $"There is no report '{folder.File("none.html")}'."), Said(await Heard.RunAsync("verify", folder.File("none.html"))));
        Assert.Equal(1, (await Heard.RunAsync("verify", folder.Path)).ExitCode);
    }

    [Theory]
    [InlineData("", "is no report of this program")]
    [InlineData("<html><p>hello</p></html>", "is no report of this program")]
    [InlineData(Foot, "carries no proof: an earlier version")]
    [InlineData("<script type=\"application/json\" id=\"proof\">{\"format\":1", "the file was cut off")]
    [InlineData(Foot + "<script type=\"application/json\" id=\"proof\">{\"format\":1}</script>\n", "cannot be read")]
    [InlineData(Foot + "<script type=\"application/json\" id=\"proof\">[]</script>\n", "cannot be read")]
    [InlineData(Foot + "<script type=\"application/json\" id=\"proof\">{\"format\":2}</script>\n", "another version")]
    public async Task Verify_OtherText_IsToldInWords(string text, string words)
    {
        await File.WriteAllTextAsync(folder.File("r.html"), text);
        await AssertRefusedAsync(words);
    }

    [Fact]
    public async Task Verify_BinaryFile_IsToldInWords()
    {
        await File.WriteAllBytesAsync(folder.File("r.html"), [0xff, 0xfe, 0x00, 0xd8]);
        await AssertRefusedAsync("not UTF-8");
    }

    [Fact]
    public async Task Verify_HugeFile_IsNotRead()
    {
        using (var file = File.Create(folder.File("r.html")))
            file.SetLength(65 << 20);
        await AssertRefusedAsync("larger than 64 MB");
    }

    [Fact]
    public async Task Verify_ValuesThatUnpackToTooMuch_AreNotUnpacked()
    {
        await WriteAsync(ForgedProof.Pack(new string(' ', 40 << 20)), []);
        await AssertRefusedAsync("cannot be read");
    }

    [Theory]
    [InlineData("null", "[]")]
    [InlineData("{}", "[]")]
    [InlineData("{\"values\":[{\"part\":null,\"shows\":[]}],\"inputs\":[]}", "[]")]
    [InlineData("{\"values\":[{\"part\":\"a\",\"shows\":[5]}],\"inputs\":[]}", "[]")]
    [InlineData("{\"values\":[],\"inputs\":[]}", "[]")]
    [InlineData("{\"values\":[],\"inputs\":[]}", "[null]")]
    [InlineData("{\"values\":[],\"inputs\":[]}", "[{\"name\":\"a\",\"chars\":99999999999,\"sha256\":\"\"}]")]
    public async Task Verify_DataOfAnotherShape_AreRefused(string values, string parts)
    {
        await WriteAsync(ForgedProof.Pack(values), JsonNode.Parse(parts)!.AsArray());
        await AssertRefusedAsync("changed");
    }

    [Theory]
    [InlineData(2147483647)]
    [InlineData(-2147483648)]
    [InlineData(0)]
    public async Task Verify_PartsOfImpossibleLength_AreChanged(int length)
    {
        JsonObject Part(string name) => new() { ["name"] = name, ["chars"] = length, ["sha256"] = "" };
        await WriteAsync(ForgedProof.Pack("{\"values\":[],\"inputs\":[]}"), [Part("head"), Part("part-1\u001b[2J"), Part("foot-end"), Part("script")]);
        var heard = await Heard.RunAsync("verify", folder.File("r.html"));
        Assert.Equal(2, heard.ExitCode);
        Assert.StartsWith("the report was changed after it was made", heard.LastLine, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', heard.Out);
    }

    private static (int, string) Said(Heard heard) => (heard.ExitCode, heard.Error.TrimEnd());

    private Task WriteAsync(string packed, JsonArray parts) => File.WriteAllTextAsync(folder.File("r.html"), $"""
        {Foot}<script type="application/json" id="proof">{new JsonObject
        {
            ["format"] = 1, ["notebook"] = "a.ipynb", ["notebook_sha256"] = "", ["library"] = "x", ["ending"] = "complete",
            ["settings"] = new JsonArray(), ["parts"] = parts, ["packed"] = packed,
        }.ToJsonString()}</script>

        """);

    private async Task AssertRefusedAsync(string words)
    {
        var heard = await Heard.RunAsync("verify", folder.File("r.html"));
        Assert.Equal(2, heard.ExitCode);
        Assert.Contains(words, heard.Error, StringComparison.Ordinal);
        Assert.Equal(1, Regex.Count(heard.Error.TrimEnd(), "^", RegexOptions.Multiline));
    }
}
