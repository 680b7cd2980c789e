using System.Xml.Linq;

namespace Analytics.Notebooks.Tests.Look;

public sealed class GalleryTests
{
    [Fact]
    public void Page_AllBlocks_IsWellFormedAndCanBeKept()
    {
        var blocks = Gallery.Blocks();

        foreach (var block in blocks) XElement.Parse("<x>" + block.ToHtml() + "</x>");

        // To look at the blocks: LOOK_GALLERY=/tmp/gallery.html dotnet test --filter GalleryTests
        if (Environment.GetEnvironmentVariable("LOOK_GALLERY") is { Length: > 0 } path) File.WriteAllText(path, Gallery.Page(blocks));
    }
}
