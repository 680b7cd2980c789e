namespace Analytics.Season;

/// <summary>Reads a season folder into typed trials.</summary>
public static class SeasonReader
{
    /// <summary>Reads and checks a season folder.</summary>
    /// <param name="folder">The season folder.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <exception cref="SeasonException">The folder or its settings cannot be used at all.</exception>
    public static SeasonData Read(string folder, CancellationToken cancellation = default)
        => throw new SeasonException($"'{folder}' cannot be read yet.");
}
