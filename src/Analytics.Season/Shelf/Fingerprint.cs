using System.Globalization;
using System.IO.Enumeration;
using System.Security.Cryptography;
using System.Text;

namespace Analytics.Season.Shelf;

/// <summary>What a folder holds, told by the path, length and time of last change of every file below it, without reading any.</summary>
internal static class Fingerprint
{
    /// <summary>The fingerprint of some folders; another text as soon as a file is changed, added, renamed or removed.</summary>
    /// <param name="folders">Full paths.</param>
    /// <param name="except">Name of a file that is left out wherever it lies.</param>
    /// <exception cref="SeasonException">A folder cannot be listed.</exception>
    public static string Of(IEnumerable<string> folders, string except)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var folder in folders)
            foreach (var line in Lines(folder, except).Prepend($"{folder}\n").Order(StringComparer.Ordinal)) hash.AppendData(Encoding.UTF8.GetBytes(line));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static List<string> Lines(string folder, string except)
    {
        try
        {
            // Links are not followed: one that leads outside is not read, and what one inside leads to is listed anyway.
            return [.. new FileSystemEnumerable<string>(folder, Line, new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0, IgnoreInaccessible = true })
            {
                ShouldRecursePredicate = (ref entry) => !entry.Attributes.HasFlag(FileAttributes.ReparsePoint),
                ShouldIncludePredicate = (ref entry) => !entry.FileName.Equals(except, StringComparison.OrdinalIgnoreCase),
            }];
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new SeasonException($"A season folder cannot be listed: {error.Message}", error);
        }
    }

    // The time a folder was changed says nothing that its files do not say.
    private static string Line(ref FileSystemEntry entry) => entry.IsDirectory
        ? $"{entry.ToFullPath()}/\n"
        : string.Create(CultureInfo.InvariantCulture, $"{entry.ToFullPath()}\t{entry.Length}\t{entry.LastWriteTimeUtc.UtcTicks}\n");
}
