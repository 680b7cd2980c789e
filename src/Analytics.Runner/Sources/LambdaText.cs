using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Analytics.Runner.Sources;

/// <summary>The source text of a lambda, to be put into another file.</summary>
public static class LambdaText
{
    /// <summary>Whether a text is a lambda and nothing else.</summary>
    /// <param name="code">C#.</param>
    public static bool Is(string code) => Parse(code) is LambdaExpressionSyntax { ContainsDiagnostics: false } lambda && lambda.FullSpan.Length == code.Length;

    /// <summary>The lambda with plain spacing. What its author spread over several lines stays so, moved to the new margin.</summary>
    /// <param name="code">The lambda.</param>
    /// <param name="margin">Spaces before every line but the first.</param>
    public static string Laid(string code, int margin)
    {
        var lambda = Parse(code);
        var lines = code.Trim().ReplaceLineEndings("\n").Split('\n');
        if (lines.Length == 1) return OneLine(lambda, lines[0], margin);
        // White space inside a text over several lines belongs to the text.
        if (lambda.DescendantTokens().Any(t => t.Text.Contains('\n', StringComparison.Ordinal))) return string.Join('\n', lines);
        var own = lines.Skip(1).Where(l => l.Trim().Length > 0).Min(l => l.Length - l.TrimStart().Length);
        return string.Join('\n', lines.Skip(1).Select(l => l.Trim().Length == 0 ? "" : new string(' ', margin) + l[own..].TrimEnd()).Prepend(lines[0].TrimEnd()));
    }

    private static string OneLine(ExpressionSyntax lambda, string code, int margin)
    {
        var spaced = lambda.NormalizeWhitespace(eol: "\n").ToFullString();
        // Only a block is better for lines of its own; a pattern in braces is not.
        if (lambda is LambdaExpressionSyntax { Block: null }) return spaced.Contains('\n', StringComparison.Ordinal) ? code : spaced;
        return spaced.Replace("\n", "\n" + new string(' ', margin), StringComparison.Ordinal);
    }

    private static ExpressionSyntax Parse(string code) => SyntaxFactory.ParseExpression(code);
}
