using Analytics.Runner.Sources;

namespace Analytics.Runner.Tests.Sources;

public class LambdaTextTests
{
    [Theory]
    [InlineData("(a, b) => a", true)]
    [InlineData("x => { return x; }", true)]
    [InlineData("Method", false)]
    [InlineData("a => b; c", false)]
    [InlineData("a => b)", false)]
    [InlineData("", false)]
    public void Is_Lambda_AndNothingElse(string code, bool isOne) => Assert.Equal(isOne, LambdaText.Is(code));

    [Theory]
    [InlineData("(a,b)=>a/b", "(a, b) => a / b")]
    [InlineData("a  =>  a is { } b ? b : null", "a => a is { } b ? b : null")]
    [InlineData("a => \"x  y\"", "a => \"x  y\"")]
    [InlineData("a => { return a; }", "a =>\n  {\n      return a;\n  }")]
    [InlineData("a => a\n      + 1 // one\n        - 2", "a => a\n  + 1 // one\n    - 2")]
    [InlineData("a => @\"x\n      y\"", "a => @\"x\n      y\"")]
    public void Laid_Lambda_HasPlainSpacingAndItsAuthorsLines(string code, string laid) => Assert.Equal(laid, LambdaText.Laid(code, 2));
}
