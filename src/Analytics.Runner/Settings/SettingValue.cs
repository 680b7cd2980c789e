using System.Globalization;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Analytics.Runner.Settings;

/// <summary>The value of a setting as it would be given for a run.</summary>
internal static class SettingValue
{
    /// <summary>The text that <see cref="SettingType.ToLiteral"/> makes the literal of.</summary>
    /// <param name="setting">A setting with the literal as written or as made.</param>
    public static string Of(Setting setting) => SyntaxFactory.ParseExpression(setting.Literal) switch
    {
        LiteralExpressionSyntax { Token.Value: string text } => text,
        ObjectCreationExpressionSyntax { ArgumentList.Arguments: { Count: 3 } parts } when setting.Type.Name == "DateOnly"
            => string.Join('-', parts.Select(p => Whole(p.ToString()))),
        _ => setting.Type.Name == "string" ? setting.Literal : setting.Literal.TrimEnd('d', 'D', 'L', 'm', 'M'),
    };

    private static string Whole(string digits)
        => int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number.ToString("00", CultureInfo.InvariantCulture) : digits;
}
