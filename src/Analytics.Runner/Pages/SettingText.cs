using System.Text.RegularExpressions;
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
        if (!Path().IsMatch(setting.Literal))
            return setting;
        var parts = setting.Literal.Trim('"', '@').Split(['/', '\\'], StringSplitOptions.RemoveEmptyEntries);
        return setting with { Literal = $"\"{(parts.Length > 0 ? parts[^1] : "")}\"" };
    }

    [GeneratedRegex("""^@?"(?:\.{0,2}[/\\]|~[/\\]|[A-Za-z]:[/\\])""")]
    private static partial Regex Path();
}
