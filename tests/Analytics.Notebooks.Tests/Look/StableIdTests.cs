using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Look;

public sealed class StableIdTests
{
    // Test vectors of the FNV-1a authors (Fowler, Noll, Vo), 32 bits.
    [Theory]
    [InlineData("", "x-811c9dc5")]
    [InlineData("a", "x-e40c292c")]
    [InlineData("foobar", "x-bf9cf968")]
    public void Of_Content_IsThePublishedHash(string content, string expected) => Assert.Equal(expected, StableId.Of("x", content));
}
