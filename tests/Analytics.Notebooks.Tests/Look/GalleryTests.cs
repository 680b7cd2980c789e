using System.Xml.Linq;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Look;

public sealed class GalleryTests
{
    [Fact]
    public void Page_AllBlocks_IsWellFormedAndCanBeKept()
    {
        var blocks = Gallery.Blocks();

        foreach (var block in blocks) XElement.Parse("<x>" + block.ToHtml() + "</x>");

        // To look at the blocks: LOOK_GALLERY=/tmp/gallery.html dotnet test --filter GalleryTests
        if (Environment.GetEnvironmentVariable("LOOK_GALLERY") is not { Length: > 0 } path) return;
        File.WriteAllText(path, Gallery.Page(blocks));
        File.WriteAllText(Path.ChangeExtension(path, ".template.json"), PlotTemplate.Json);
    }
}
