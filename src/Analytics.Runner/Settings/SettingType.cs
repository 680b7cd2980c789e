using System.Globalization;
using Microsoft.CodeAnalysis.CSharp;

namespace Analytics.Runner.Settings;

/// <summary>
/// A type a setting can have. A value given for a run is turned into a literal of exactly this type: an
/// <c>int</c> in the place of a <c>double</c> would change what the notebook computes.
/// </summary>
public sealed class SettingType
{
    private static readonly SettingType[] Plain =
    [
        new("string", "any text", text => SymbolDisplay.FormatLiteral(text, quote: true)),
        new("bool", "true or false", text => bool.TryParse(text, out var b) ? (b ? "true" : "false") : null),
        new("int", "a whole number", text => int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var n)
            ? n.ToString(CultureInfo.InvariantCulture) : null),
        new("long", "a whole number", text => long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var n)
            ? n.ToString(CultureInfo.InvariantCulture) + "L" : null),
        new("double", "a number with a decimal point", DoubleLiteral),
        new("decimal", "a number with a decimal point", text => decimal.TryParse(text, NumberStyles.Number & ~NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out var n)
            ? n.ToString(CultureInfo.InvariantCulture) + "m" : null),
        new("DateOnly", "a date such as 2026-03-02", text => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var d)
            ? string.Create(CultureInfo.InvariantCulture, $"new DateOnly({d.Year}, {d.Month}, {d.Day})") : null),
    ];

    private readonly Func<string, string?> literal;

    private SettingType(string name, string expects, Func<string, string?> literal, bool isNullable = false)
    {
        Name = name;
        Expects = expects;
        IsNullable = isNullable;
        this.literal = literal;
    }

    /// <summary>Name of the type without a question mark.</summary>
    public string Name { get; }

    /// <summary>Whether <c>null</c> is a value of it.</summary>
    public bool IsNullable { get; }

    /// <summary>What a value must look like, in words.</summary>
    public string Expects { get; }

    /// <summary>The type as written in code.</summary>
    public string CodeName => IsNullable ? Name + "?" : Name;

    /// <summary>Finds a type by its C# name, or null.</summary>
    /// <param name="codeName">For example <c>double</c> or <c>int?</c>.</param>
    public static SettingType? Find(string codeName)
    {
        ArgumentNullException.ThrowIfNull(codeName);
        var isNullable = codeName.EndsWith('?');
        var plain = Array.Find(Plain, t => t.Name == codeName.TrimEnd('?'));
        return plain is null || !isNullable
            ? plain
            : new SettingType(plain.Name, plain.Expects + ", or null", plain.literal, isNullable: true);
    }

    /// <summary>A value as a C# literal of this type, or null when it is none.</summary>
    /// <param name="text">The value as given.</param>
    public string? ToLiteral(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return IsNullable && text == "null" ? "null" : literal(text);
    }

    private static string? DoubleLiteral(string text)
    {
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var n) || !double.IsFinite(n))
            return null;
        return n.ToString("R", CultureInfo.InvariantCulture) + "d";
    }
}
