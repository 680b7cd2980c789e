using System.Text.RegularExpressions;
using Analytics.Runner.Proofs;
using Analytics.Runner.Settings;

namespace Analytics.Runner.Pages;

/// <summary>
/// A setting as a reader of the report may see it: of a path, and of each of several, only the last name, since a report travels and
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
        return setting with { Literal = $"\"{string.Join(';', Parts(setting).Select(p => Path().IsMatch(p) ? LastName(p) : p))}\"" };
    }

    /// <summary>A setting as the data of the report tell it.</summary>
    public static ProofSetting ForProof(Setting setting, bool given)
        => new(setting.Name, SettingValue.Of(ForReaders(setting)), given, IsPath(setting));

    /// <summary>Whether a setting is a path, or several with semicolons between them.</summary>
    public static bool IsPath(Setting setting) => setting.Type.Name == "string" && Parts(setting).Any(p => Path().IsMatch(p));

    /// <summary>The paths of a setting that is one.</summary>
    public static IReadOnlyList<string> Paths(Setting setting)
        => SettingValue.Of(setting).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    // Several folders stand in one setting, with semicolons between them.
    private static string[] Parts(Setting setting) => setting.Literal.Trim('"', '@').Split(';');

    private static string LastName(string path) => path.Split(['/', '\\'], StringSplitOptions.RemoveEmptyEntries).LastOrDefault(p => p.Trim() is not (".." or ".")) ?? "";

    [GeneratedRegex("""^\s*(?:\.{0,2}[/\\]|~[/\\]|[A-Za-z]:[/\\])""")]
    private static partial Regex Path();
}
