namespace Analytics.Cli.Tests.Architecture;

/// <summary>Members that reach for console, clock, culture, files or chance.</summary>
internal static class OutsideWorld
{
    private static readonly HashSet<string> Types =
    [
        "System.Console", "System.Diagnostics.Stopwatch",
        "System.IO.File", "System.IO.Directory", "System.IO.FileInfo", "System.IO.DirectoryInfo", "System.IO.FileStream",
        "System.Diagnostics.Process", "System.Net.Http.HttpClient",
    ];

    private static readonly HashSet<string> Members =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today",
        "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.TimeProvider.get_System", "System.Environment.get_TickCount", "System.Environment.get_TickCount64",
        "System.Globalization.CultureInfo.get_CurrentCulture", "System.Globalization.CultureInfo.get_CurrentUICulture",
        "System.Globalization.CultureInfo.set_CurrentCulture", "System.Globalization.CultureInfo.set_CurrentUICulture",
        "System.Guid.NewGuid", "System.Random.get_Shared",
    ];

    // The same thing without saying so: these take the current culture, or a seed from the clock.
    private static readonly HashSet<string> Silent =
    [
        "System.Random..ctor()",
        "System.Double.ToString()", "System.Double.ToString(String)", "System.Double.Parse(String)", "System.Double.TryParse(String, Double&)",
        "System.Decimal.ToString()", "System.Decimal.ToString(String)",
        "System.DateOnly.ToString()", "System.DateOnly.ToString(String)", "System.DateOnly.Parse(String)",
        "System.DateTime.ToString()", "System.DateTime.ToString(String)", "System.DateTime.Parse(String)",
        "System.String.Format(String, Object)", "System.String.Format(String, Object, Object)", "System.String.Format(String, Object, Object, Object)",
        "System.String.Format(String, Object[])", "System.String.ToLower()", "System.String.ToUpper()",
        "System.Text.StringBuilder.Append(Double)", "System.Convert.ToDouble(String)", "System.Convert.ToString(Double)",
    ];

    public static bool Touches(UsedMember member)
        => Types.Contains(member.Type) || Members.Contains($"{member.Type}.{member.Name}") || Silent.Contains(member.ToString());
}
