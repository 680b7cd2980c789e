using Analytics.Runner.Documents;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Analytics.Runner.Settings;

/// <summary>Reads what a notebook lets its user set: typed literals in the cell tagged <c>parameters</c>.</summary>
public static class SettingsCell
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    /// <summary>The settings cell, or null when the notebook has none.</summary>
    /// <param name="document">The notebook.</param>
    /// <param name="name">What to call it in messages.</param>
    /// <exception cref="NotebookException">More than one cell claims to be it.</exception>
    public static NotebookCell? Find(NotebookDocument document, string name)
    {
        ArgumentNullException.ThrowIfNull(document);
        var tagged = document.Cells.Where(c => c.IsCode && c.HasTag(CellTag.Settings)).ToList();
        return tagged.Count <= 1
            ? tagged.SingleOrDefault()
            : throw new NotebookException(Fault.Data, $"'{name}' has {tagged.Count} cells tagged '{CellTag.Settings}'; leave the tag on one of them.");
    }

    /// <summary>The settings a cell declares, in order.</summary>
    /// <param name="source">Code of the settings cell.</param>
    public static IReadOnlyList<Setting> Read(string source)
    {
        var settings = new List<Setting>();
        var root = CSharpSyntaxTree.ParseText(source, Script).GetCompilationUnitRoot();
        foreach (var statement in root.Members.OfType<FieldDeclarationSyntax>())
        {
            var comment = Comment(statement);
            foreach (var variable in statement.Declaration.Variables)
            {
                if (variable.Initializer is { Value: var value } && TypeOf(statement.Declaration.Type, value) is { } type)
                    settings.Add(new Setting(variable.Identifier.Text, type, value.ToString(), comment));
            }
        }

        return settings;
    }

    private static SettingType? TypeOf(TypeSyntax declared, ExpressionSyntax value)
        => SettingType.Find(declared.IsVar ? NaturalType(value) : declared.ToString());

    private static string NaturalType(ExpressionSyntax value) => value switch
    {
        LiteralExpressionSyntax literal => literal.Token.Value switch
        {
            string => "string",
            bool => "bool",
            int => "int",
            long => "long",
            double => "double",
            decimal => "decimal",
            _ => "",
        },
        PrefixUnaryExpressionSyntax { Operand: var operand } => NaturalType(operand),
        ObjectCreationExpressionSyntax creation => creation.Type.ToString(),
        _ => "",
    };

    private static string Comment(FieldDeclarationSyntax statement)
    {
        var trivia = statement.GetTrailingTrivia().FirstOrDefault(t => t.IsKind(SyntaxKind.SingleLineCommentTrivia));
        return trivia.ToString().TrimStart('/').Trim();
    }
}
