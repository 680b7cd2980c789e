using System.Text.Json.Nodes;
using Analytics.Runner.Documents;

namespace Analytics.Runner.Tests.Documents;

public class NotebookDocumentTests
{
    [Fact]
    public void Parse_UnknownKeys_ComeOutAsTheyWentIn()
    {
        const string Json = """
            {"cells":[{"cell_type":"raw","id":"r1","metadata":{"format":"text/x-own"},"source":["a\n","b"],"attachments":{"p.png":{"image/png":"AAAA"}}},
            {"cell_type":"code","id":"c1","metadata":{"own":{"deep":[1,null,"é<"]}},"source":"1","outputs":[],"execution_count":null}],
            "metadata":{"own_tool":{"x":1.50}},"nbformat":4,"nbformat_minor":5,"extra_key":[true]}
            """;
        var document = NotebookDocument.Parse(Json, "a.ipynb");
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(Json), JsonNode.Parse(document.ToString())));
        Assert.Contains("\"é<\"", document.ToString(), StringComparison.Ordinal);
        Assert.Contains("1.50", document.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void ToUtf8Json_AnyNotebook_IsIndentedByOneWithFinalNewline()
    {
        var text = NotebookDocument.Parse(new TinyNotebook().Code("1").ToJson(), "a.ipynb").ToString();
        Assert.StartsWith("{\n \"cells\": [\n  {\n", text, StringComparison.Ordinal);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', text);
    }

    [Fact]
    public void Parse_MissingOrDoubleIds_GetStableUniqueOnes()
    {
        const string Json = """
            {"cells":[{"cell_type":"markdown","metadata":{},"source":"a"},
            {"cell_type":"markdown","id":"cell-1","metadata":{},"source":"b"},
            {"cell_type":"markdown","id":"cell-1","metadata":{},"source":"c"},
            {"cell_type":"markdown","id":"not valid!","metadata":{},"source":"d"}],"metadata":{},"nbformat":4,"nbformat_minor":2}
            """;
        var first = NotebookDocument.Parse(Json, "a.ipynb");
        var second = NotebookDocument.Parse(Json, "a.ipynb");
        var ids = first.Cells.Select(c => c.Id).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.Equal(ids, second.Cells.Select(c => c.Id));
        Assert.All(ids, id => Assert.Matches("^[a-zA-Z0-9_-]{1,64}$", id));
        Assert.Contains("\"nbformat_minor\": 5", first.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "not valid JSON")]
    [InlineData("PK\u0003\u0004", "not valid JSON at line 1")]
    [InlineData("{\"cells\":[],\n\"cells\":[],\"nbformat\":4}", "not valid JSON")]
    [InlineData("[]", "no JSON object")]
    [InlineData("{\"cells\":[]}", "no format number")]
    [InlineData("{\"cells\":[],\"nbformat\":3}", "format 3")]
    [InlineData("{\"nbformat\":4}", "no list of cells")]
    [InlineData("{\"cells\":[7],\"nbformat\":4}", "cell 1 that is no object")]
    [InlineData("{\"cells\":[{\"cell_type\":\"heading\"}],\"nbformat\":4}", "cell 1 of type 'heading'")]
    public void Parse_NoNotebook_SaysWhatIsWrong(string json, string says)
    {
        var e = Assert.Throws<NotebookException>(() => NotebookDocument.Parse(json, "plan.ipynb"));
        Assert.Equal(Fault.Data, e.Kind);
        Assert.Contains("plan.ipynb", e.Message, StringComparison.Ordinal);
        Assert.Contains(says, e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Source_ListOfLines_IsJoinedWithLineFeeds()
    {
        const string Json = """{"cells":[{"cell_type":"code","id":"a","metadata":{},"source":["x\r\n","y"]}],"metadata":{},"nbformat":4}""";
        Assert.Equal("x\ny", NotebookDocument.Parse(Json, "a.ipynb").Cells[0].Source);
    }
}
