using System.Text.Json;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Look;

public sealed class PlotTemplateTests
{
    [Fact]
    public void Json_Template_IsSmallAndComplete()
    {
        using var template = JsonDocument.Parse(PlotTemplate.Json);
        var layout = template.RootElement.GetProperty("layout");

        Assert.InRange(PlotTemplate.Json.Length, 1, 1500);
        Assert.Equal(5, layout.GetProperty("colorway").GetArrayLength());
        Assert.Equal("#d9dee4", layout.GetProperty("xaxis").GetProperty("gridcolor").GetString());
    }
}
