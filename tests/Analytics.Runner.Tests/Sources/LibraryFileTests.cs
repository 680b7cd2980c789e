using Analytics.Runner.Documents;
using Analytics.Runner.Sources;

namespace Analytics.Runner.Tests.Sources;

public class LibraryFileTests
{
    private const string Good = """
        using System.Text;
        using Analytics.Runner.Documents;
        namespace Made;

        /// <summary>A &lt;class&gt;.</summary>
        public static class A
        {
            /// <summary>Its cell.</summary>
            public static NotebookCell Cell { get; } = NotebookCell.Code("a", string.Join(' ', Enumerable.Range(1, 2)));
        }
        """;

    [Fact]
    public void Compile_GoodFile_GivesItsTypesAndTheUsingsItDoesNotNeed()
    {
        var file = LibraryFile.Compile(Good, [typeof(NotebookCell).Assembly]);
        Assert.Empty(file.Errors);
        Assert.Equal([1], file.UnneededUsings);
        var cell = file.Assembly!.GetType("Made.A")!.GetProperty("Cell")!.GetValue(null);
        Assert.Equal("1 2", Assert.IsType<NotebookCell>(cell).Source);
    }

    [Theory]
    [InlineData("string.Join", "string.Joyn", 9, "CS0117")]
    [InlineData("A &lt;class&gt;.", "A <class>.", 5, "CS1570")]
    [InlineData("NotebookCell Cell { get; }", "NotebookCell Cell { get; set; } = null; internal static NotebookCell Other", 9, "CS8625")]
    public void Compile_WhatTheBuildWouldRefuse_IsAnErrorWithItsLine(string from, string to, int line, string id)
    {
        var file = LibraryFile.Compile(Good.Replace(from, to, StringComparison.Ordinal), [typeof(NotebookCell).Assembly]);
        Assert.Null(file.Assembly);
        Assert.Contains(file.Errors, e => e.Line == line && e.Message.StartsWith(id, StringComparison.Ordinal));
    }
}
