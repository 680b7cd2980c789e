using Analytics.Runner.Sources;

namespace Analytics.Runner.Tests.Sources;

public class TopLevelCodeTests
{
    [Theory]
    [InlineData("var a = Maker.Each<int>(1, (x, y) => x.Z / y);", "Maker", "Each", false)]
    [InlineData("var a = Maker.Each<int>(1) with { B = 2 };", "Maker", "Each", true)]
    [InlineData("Thing a = (b.Twice()).Thrice(3);", "b", "Twice,Thrice", false)]
    [InlineData("var a = b with { C = Maker.D() };", "b", "", true)]
    [InlineData("var a = 3 + Maker.D();", "", "", false)]
    [InlineData("var a = new Maker();", "", "", false)]
    public void Variables_Initializer_IsReadByItsSyntax(string code, string root, string members, bool isCopy)
    {
        var variable = Assert.Single(TopLevelCode.Variables(code));
        Assert.Equal(("a", root, members, isCopy), (variable.Name, variable.Root, string.Join(',', variable.Members), variable.IsChangedCopy));
    }

    [Fact]
    public void Variables_WhatIsNotAtTheTopOrHasNoValue_IsLeftOut()
        => Assert.Equal([("a", 2), ("b", 6), ("c", 7)], TopLevelCode.Variables("""
            using System;
            var a = M.A();
            int d;
            void F() { var inside = M.A(); }
            // var comment = M.A();
            int b = 1,
                c = 2;
            """).Select(v => (v.Name, v.Line)));

    [Fact]
    public void SyntaxError_CodeWithAMistake_NamesTheFirstWithItsLine()
    {
        Assert.Null(TopLevelCode.SyntaxError("var a = Unknown.Thing();"));
        var error = TopLevelCode.SyntaxError("var a = 1;\nvar b = (2;\n");
        Assert.Equal(2, error!.Value.Line);
        Assert.StartsWith("CS1026", error.Value.Message, StringComparison.Ordinal); // CS1026: ) expected
    }
}
