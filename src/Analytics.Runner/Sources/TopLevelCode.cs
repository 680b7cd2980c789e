using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Analytics.Runner.Sources;

/// <summary>What can be told of the code of a cell by its syntax, without compiling it.</summary>
public static class TopLevelCode
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    /// <summary>The variables declared at the top level with an initial value, in order.</summary>
    /// <param name="code">C# as in a cell.</param>
    public static IReadOnlyList<TopLevelVariable> Variables(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        var root = CSharpSyntaxTree.ParseText(code, Script).GetCompilationUnitRoot();
        return [.. root.Members.OfType<FieldDeclarationSyntax>().SelectMany(f => f.Declaration.Variables).Where(v => v.Initializer is not null).Select(Read)];
    }

    /// <summary>The first mistake of syntax with its line, from 1; null when there is none.</summary>
    /// <param name="code">C# as in a cell.</param>
    public static (int Line, string Message)? SyntaxError(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        return CSharpSyntaxTree.ParseText(code, Script).GetDiagnostics().FirstOrDefault(d => d.Severity == DiagnosticSeverity.Error) is { } error
            ? (LineOf(error.Location), $"{error.Id}: {error.GetMessage(CultureInfo.InvariantCulture)}")
            : null;
    }

    private static TopLevelVariable Read(VariableDeclaratorSyntax variable)
    {
        var members = new Stack<string>();
        var isCopy = false;
        ExpressionSyntax? rest = variable.Initializer!.Value;
        while (true)
        {
            switch (rest)
            {
                case ParenthesizedExpressionSyntax p: rest = p.Expression; continue;
                case WithExpressionSyntax w: (rest, isCopy) = (w.Expression, true); continue;
                case InvocationExpressionSyntax i: rest = i.Expression; continue;
                case MemberAccessExpressionSyntax m:
                    members.Push(m.Name.Identifier.Text);
                    rest = m.Expression;
                    continue;
                default:
                    var root = rest is IdentifierNameSyntax name ? name.Identifier.Text : "";
                    return new(variable.Identifier.Text, root, [.. members], isCopy, LineOf(variable.Identifier.GetLocation()));
            }
        }
    }

    private static int LineOf(Location place) => place.GetLineSpan().StartLinePosition.Line + 1;
}
