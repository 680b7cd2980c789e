namespace Analytics.Season.Files;

/// <summary>Messages of the system about files.</summary>
internal static class SystemMessage
{
    /// <summary>The message without the path of this machine, to stand within a sentence.</summary>
    /// <param name="error">What the system said.</param>
    /// <param name="root">Full path of the season folder.</param>
    public static string Plain(Exception error, string root)
        => error.Message.Replace(root + Path.DirectorySeparatorChar, "", StringComparison.Ordinal).Replace('\\', '/').TrimEnd('.', ' ');
}
