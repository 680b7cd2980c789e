using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Analytics.Runner.Kernels;

/// <summary>Whether code declares something that outlives a run of it: a static field, property, event or constructor.</summary>
internal static class StaticState
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    public static bool IsIn(string source)
        => CSharpSyntaxTree.ParseText(source, Script).GetRoot().DescendantNodes().OfType<MemberDeclarationSyntax>()
            .Any(m => m is BaseFieldDeclarationSyntax or BasePropertyDeclarationSyntax or ConstructorDeclarationSyntax && m.Modifiers.Any(SyntaxKind.StaticKeyword));
}
