using System.Text.RegularExpressions;
using Analytics.Runner.Proofs;
using Analytics.Runner.Settings;

namespace Analytics.Runner.Pages;

/// <summary>
/// A setting as a reader of the report may see it: of a path only the last name, since a report travels and
/// where a folder lies on its maker's disk is nobody's business.
/// </summary>
internal static partial class SettingText
{
    // Suffixes of number literals say nothing to a reader.
    public static Setting ForReaders(Setting setting)
    {
        if (setting.Type.Name != "string")
            return setting with { Literal = setting.Literal.TrimEnd('d', 'D', 'L', 'm', 'M') };
        if (!IsPath(setting))
            return setting;
        var parts = setting.Literal.Trim('"', '@').Split(['/', '\\'], StringSplitOptions.RemoveEmptyEntries);
        return setting with { Literal = $"\"{(parts.Length > 0 ? parts[^1] : "")}\"" };
    }

    /// <summary>A setting as the data of the report tell it.</summary>
    public static ProofSetting ForProof(Setting setting, bool given)
        => new(setting.Name, SettingValue.Of(ForReaders(setting)), given, IsPath(setting));

    /// <summary>Whether a setting is a path.</summary>
    public static bool IsPath(Setting setting) => setting.Type.Name == "string" && Path().IsMatch(setting.Literal);

    [GeneratedRegex("""^@?"(?:\.{0,2}[/\\]|~[/\\]|[A-Za-z]:[/\\])""")]
    private static partial Regex Path();
}
