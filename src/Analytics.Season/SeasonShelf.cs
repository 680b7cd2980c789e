using Analytics.Season.Joining;
using Analytics.Season.Shelf;

namespace Analytics.Season;

/// <summary>
/// Opens the season a notebook is about: reads it, joins earlier seasons, takes names out. The season opened last is kept, one at most, and handed out again as long as no file below its folders is
/// changed, added or removed (path, length and time of last change tell), so that many pages made in one process read once. Safe for use from several threads.
/// </summary>
public static class SeasonShelf
{
    private static readonly Lock Door = new();
    private static KeptSeason? kept;

    /// <summary>Opens a season.</summary>
    /// <param name="season">The season folder.</param>
    /// <param name="earlier">Earlier season folders to join on athlete_id, oldest first, separated by semicolons; empty for none.</param>
    /// <param name="share">How players are named: <c>names</c>, <c>initials</c> or <c>codes</c>.</param>
    /// <exception cref="SeasonException">A season cannot be used, the seasons cannot be joined, or <paramref name="share"/> is none of the three words.</exception>
    public static SeasonData Open(string season, string earlier = "", string share = "names")
    {
        ArgumentNullException.ThrowIfNull(earlier);
        if (share != "names") throw new SeasonException("Sharing without names comes with the next change.");
        lock (Door)
        {
            var sources = EarlierFolders.Open(season, earlier);
            var asked = string.Join('\n', sources.Select(s => s.Folder.Root).Append(share));
            var fingerprint = Fingerprint.Of(sources.Select(s => s.Folder.Root), "share-key.txt");
            if (kept is { } last && last.Answers(asked, fingerprint, null)) return last.Data;
            // Let go before reading, so that there are never two seasons in memory for longer than need be.
            kept = null;
            var readings = sources.Select(s => s.Read()).ToList();
            var data = SeasonJoin.Of([.. readings.Select(r => r.Data)]);
            if (readings.All(r => r.IsWhole)) kept = new KeptSeason(asked, fingerprint, null, data);
            return data;
        }
    }
}
