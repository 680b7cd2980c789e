using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Analytics.Runner.Kernels;

/// <summary>Whether a cell ends in an expression whose value is its result, as opposed to a call that gives none.</summary>
internal static class TrailingExpression
{
    public static bool GivesAValue(Compilation cell)
    {
        // Files taken in by #load come first; the cell itself is the last tree.
        var tree = cell.SyntaxTrees.Last();
        return tree.GetRoot() is CompilationUnitSyntax { Members: [.., GlobalStatementSyntax { Statement: ExpressionStatementSyntax { SemicolonToken.IsMissing: true } last }] }
            && cell.GetSemanticModel(tree).GetTypeInfo(last.Expression).ConvertedType is not (null or { SpecialType: SpecialType.System_Void });
    }
}
