using Analytics.Season.Examples;

namespace Analytics.Season;

/// <summary>Writes a new season folder with filled-in examples of every file.</summary>
public static class NewSeason
{
    /// <summary>Writes the folder. It appears whole or not at all.</summary>
    /// <param name="folder">Folder to make; it must not exist, or be empty.</param>
    /// <returns>The files written, inside the folder, in order.</returns>
    /// <exception cref="SeasonException">There is something in the folder already, or it cannot be written.</exception>
    public static IReadOnlyList<string> Write(string folder)
    {
        if (string.IsNullOrWhiteSpace(folder)) throw new SeasonException("No folder was given. Name the folder to make, such as spring-2026.");
        string target;
        try
        {
            target = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
            if (File.Exists(target)) throw new SeasonException($"'{folder}' is a file. Name a folder that does not exist yet.");
            if (Directory.Exists(target) && Directory.EnumerateFileSystemEntries(target).Any())
                throw new SeasonException($"The folder '{folder}' is not empty, and nothing is ever overwritten. Name a folder that does not exist yet.");
            WriteWhole(target);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new SeasonException($"The season cannot be written to '{folder}': {error.Message} Check that the folder above it exists, that you may write there and that the disk is not full.", error);
        }

        return [.. ExampleFiles.All.Select(f => f.Path)];
    }

    /// <summary>Writes beside the target under a temporary name, then renames.</summary>
    private static void WriteWhole(string target)
    {
        var temporary = $"{target}.{Guid.NewGuid():N}.tmp";
        try
        {
            foreach (var (path, text) in ExampleFiles.All)
            {
                var file = Path.Combine(temporary, path);
                Directory.CreateDirectory(Path.GetDirectoryName(file)!);
                File.WriteAllText(file, text);
            }

            // An empty folder is in the way of the rename; a folder filled meanwhile makes this fail, and stays.
            if (Directory.Exists(target)) Directory.Delete(target);
            Directory.Move(temporary, target);
        }
        finally
        {
            if (Directory.Exists(temporary)) Directory.Delete(temporary, recursive: true);
        }
    }
}
