using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Microsoft.Data.Analysis;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;

namespace Analytics.Notebooks.Tests.Blocks;

/// <summary>What a real notebook kernel in this process shows for a block.</summary>
public sealed class NotebookLookTests
{
    [Fact]
    public async Task Block_LastValueOfACell_IsShownAsHtmlAndText()
    {
        var shown = await Run("new Analytics.Notebooks.Blocks.Answers(new Analytics.Notebooks.Blocks.Answer(\"Squats moved.\", \"+7 kg\"))");

        Assert.Equal(["text/html", "text/plain"], shown.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(new Answers(new Answer("Squats moved.", "+7 kg")).ToHtml(), shown["text/html"]);
        Assert.Equal("* Squats moved.\n  +7 kg", shown["text/plain"]);
    }

    [Fact]
    public async Task Block_OfATypeMadeInACell_IsShownTheSameWay()
    {
        var shown = await Run("class Mine : Analytics.Notebooks.Blocks.Block { public override string ToHtml() => \"<i>mine</i>\"; public override string ToText() => \"mine\"; }\nnew Mine()");

        Assert.Equal("<i>mine</i>", shown["text/html"]);
        Assert.Equal("mine", shown["text/plain"]);
    }

    [Fact]
    public async Task DataFrame_AfterRegister_IsShownAsATable()
    {
        var frame = new DataFrame(new StringDataFrameColumn("name", ["Aldous"]));
        var shown = await Run(
            "Analytics.Notebooks.Tables.DataFrameTable.Register();\nnew Microsoft.Data.Analysis.DataFrame(new Microsoft.Data.Analysis.StringDataFrameColumn(\"name\", new[] { \"Aldous\" }))");

        Assert.Equal(DataFrameTable.Of(frame).ToHtml(), shown["text/html"]);
        Assert.Equal(DataFrameTable.Of(frame).ToText(), shown["text/plain"]);
    }

    private static async Task<Dictionary<string, string>> Run(string cell)
    {
        Formatter.ResetToDefault();
        using var kernel = new CompositeKernel { new CSharpKernel().UseKernelHelpers() };
        kernel.DefaultKernelName = "csharp";
        var references = $"#r \"{typeof(Block).Assembly.Location}\"\n#r \"{typeof(DataFrame).Assembly.Location}\"\n";
        var result = await Task.Run(() => kernel.SendAsync(new SubmitCode(references + cell)));

        Assert.Empty(result.Events.OfType<CommandFailed>().Select(f => f.Message));
        return Assert.Single(result.Events.OfType<ReturnValueProduced>()).FormattedValues.ToDictionary(v => v.MimeType, v => v.Value);
    }
}
