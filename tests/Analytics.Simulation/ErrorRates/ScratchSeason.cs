using Analytics.Season;

namespace Analytics.Simulation.ErrorRates;

/// <summary>Generated files read back through the season reader.</summary>
public static class ScratchSeason
{
    /// <summary>Writes files to a scratch folder, reads them as a season, and takes the folder away again.</summary>
    /// <param name="files">Content by path, forward slashes.</param>
    public static SeasonData Read(IEnumerable<KeyValuePair<string, byte[]>> files)
    {
        var folder = Directory.CreateTempSubdirectory("season-");
        try
        {
            foreach (var (path, bytes) in files)
            {
                var target = Path.Combine(folder.FullName, path);
                Directory.CreateDirectory(Path.GetDirectoryName(target)!);
                File.WriteAllBytes(target, bytes);
            }

            return SeasonReader.Read(folder.FullName);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
