using Analytics.Season.Files;
using Analytics.Season.Intake;

namespace Analytics.Season;

/// <summary>Reads a season folder into typed trials. It reads anew at every call; <see cref="SeasonShelf"/> keeps what it has read.</summary>
public static class SeasonReader
{
    /// <summary>Reads and checks a season folder. Every data row read is either kept or held back with a reason.</summary>
    /// <param name="folder">The season folder.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <exception cref="SeasonException">The folder, its settings or its athlete list cannot be used at all.</exception>
    /// <exception cref="OperationCanceledException">The reading was stopped.</exception>
    public static SeasonData Read(string folder, CancellationToken cancellation = default)
        => SeasonReading.Of(SeasonFolder.Open(folder), cancellation).Data.WithoutMarks();
}
