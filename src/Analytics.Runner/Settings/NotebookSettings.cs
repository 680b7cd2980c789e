using Analytics.Runner.Documents;
using Analytics.Runner.Files;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Analytics.Runner.Settings;

/// <summary>What a run of a notebook would be set to, without running it.</summary>
public static class NotebookSettings
{
    /// <summary>Every setting of a notebook with the value a run would use.</summary>
    /// <param name="notebook">The notebook file.</param>
    /// <param name="given">Settings given for the run: name and value as text.</param>
    /// <exception cref="NotebookException">The notebook cannot be used, a name is unknown or a value does not fit its type.</exception>
    public static IReadOnlyList<Setting> Read(string notebook, IReadOnlyList<KeyValuePair<string, string>> given)
    {
        var name = Path.GetFileName(notebook);
        return SettingsForRun.Apply(NotebookDocument.Parse(NotebookFile.Decode(NotebookFile.Read(notebook), name), name), name, given);
    }

    /// <summary>The text a string setting stands for; null when it is no string or no plain literal.</summary>
    /// <param name="setting">The setting.</param>
    public static string? Text(Setting setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        return SyntaxFactory.ParseExpression(setting.Literal) is LiteralExpressionSyntax { Token.Value: string text } ? text : null;
    }
}
