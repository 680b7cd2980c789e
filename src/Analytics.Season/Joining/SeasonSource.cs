using Analytics.Season.Files;
using Analytics.Season.Intake;

namespace Analytics.Season.Joining;

/// <summary>A folder to read, as it was named.</summary>
internal sealed record SeasonSource(string Named, SeasonFolder Folder, bool IsLatest)
{
    /// <summary>Opens a folder.</summary>
    /// <exception cref="SeasonException">Missing, not a folder, or not readable.</exception>
    public static SeasonSource Open(string path, bool isLatest) => Told(path, isLatest, () => new SeasonSource(path, SeasonFolder.Open(path), isLatest));

    /// <summary>Reads it.</summary>
    /// <exception cref="SeasonException">It cannot be used at all.</exception>
    public SeasonReading Read() => Told(Named, IsLatest, () => SeasonReading.Of(Folder, CancellationToken.None));

    // Of several folders the message must say which.
    private static T Told<T>(string named, bool isLatest, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (SeasonException fault) when (!isLatest)
        {
            throw new SeasonException($"The earlier season '{named}' cannot be joined. {fault.Message}", fault);
        }
    }
}
