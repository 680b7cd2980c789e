using System.Security.Cryptography;
using System.Text;
using Analytics.Season.Files;

namespace Analytics.Season.Sharing;

/// <summary>
/// The random key of a season's codes, in a file of the season folder. Who has a report but not the key cannot try identifiers until a code comes out, as he could with a plain digest of them.
/// </summary>
internal static class ShareKey
{
    /// <summary>Name of the file.</summary>
    public const string FileName = "share-key.txt";

    private const int Bytes = 32;
    private const int LargestFile = 4096;
    private const string Hint = "Put back the file from a copy; or delete it, and all codes of the season become others.";

    /// <summary>The key; null when there is none yet.</summary>
    /// <param name="folder">Full path of the season folder.</param>
    /// <exception cref="SeasonException">The file cannot be read, or holds no key.</exception>
    public static byte[]? Find(string folder)
    {
        var path = Path.Combine(folder, FileName);
        if (Directory.Exists(path)) throw new SeasonException($"{FileName} in the season folder is a folder, but codes need a file of this name. Move it away.");
        if (!File.Exists(path)) return null;
        try
        {
            if (new FileInfo(path).Length > LargestFile) throw new SeasonException($"{FileName} is damaged: it is far too long for a key. {Hint}");
            return Parse(File.ReadAllLines(path));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new SeasonException($"{FileName} cannot be read, so no codes can be made: {SystemMessage.Plain(error, folder)}. Close it in other programs and check that you may read it.", error);
        }
    }

    /// <summary>Makes a key and writes it. Where another run was quicker, its key is taken.</summary>
    /// <param name="folder">Full path of the season folder.</param>
    /// <exception cref="SeasonException">It cannot be written.</exception>
    public static byte[] Make(string folder)
    {
        // Files with a leading point are no part of a season.
        string path = Path.Combine(folder, FileName), temporary = Path.Combine(folder, $".share-key.{Guid.NewGuid():N}.tmp");
        var key = RandomNumberGenerator.GetBytes(Bytes);
        try
        {
            using (var file = new FileStream(temporary, OnlyForMe()))
            {
                file.Write(Encoding.UTF8.GetBytes($"# The key of this season's codes. Private: keep it, back it up with the season, never send it.\n# Whoever has it can turn codes back into players. Without it the same codes cannot be made again.\n{Convert.ToHexStringLower(key)}\n"));
                file.Flush(flushToDisk: true);
            }

            File.Move(temporary, path, overwrite: false);
            return key;
        }
        catch (IOException) when (File.Exists(path))
        {
            return Find(folder)!;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new SeasonException($"Codes need a key, and {FileName} cannot be written into the season folder: {SystemMessage.Plain(error, folder)}. Make the folder writable and run once more, or share initials.", error);
        }
        finally
        {
            if (File.Exists(temporary)) File.Delete(temporary);
        }
    }

    private static FileStreamOptions OnlyForMe()
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return options;
    }

    private static byte[] Parse(IEnumerable<string> lines)
    {
        var text = lines.Select(l => l.Trim()).Where(l => l.Length > 0 && !l.StartsWith('#')).ToList();
        if (text is not [{ Length: 2 * Bytes } hex] || !hex.All(char.IsAsciiHexDigit))
            throw new SeasonException(FormattableString.Invariant($"{FileName} is damaged: it must hold one line of {2 * Bytes} hexadecimal digits beside lines that begin with #. {Hint}"));
        return Convert.FromHexString(hex);
    }
}
