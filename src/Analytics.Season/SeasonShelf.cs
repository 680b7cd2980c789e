using Analytics.Season.Intake;
using Analytics.Season.Joining;
using Analytics.Season.Sharing;
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
    /// <param name="share">
    /// How players are named: <c>names</c>, <c>initials</c> or <c>codes</c>. With the latter two nothing in the result holds an identifier or a name, nor text of a cell that may be one; athletes stand in the
    /// order of what they are called. Codes are made with the key in <c>share-key.txt</c> of the season folder, which is written when there is none.
    /// </param>
    /// <exception cref="SeasonException">
    /// A season cannot be used, the seasons cannot be joined, <paramref name="share"/> is none of the three words, or the key cannot be read or written.
    /// </exception>
    public static SeasonData Open(string season, string earlier = "", string share = "names")
    {
        ArgumentNullException.ThrowIfNull(earlier);
        ArgumentNullException.ThrowIfNull(share);
        var word = ShareWord.Read(share);
        lock (Door)
        {
            var sources = EarlierFolders.Open(season, earlier);
            var asked = string.Join('\n', sources.Select(s => s.Folder.Root).Append(word.ToString()));
            var fingerprint = Fingerprint.Of(sources.Select(s => s.Folder.Root), ShareKey.FileName);
            var key = word is ShareAs.Codes ? ShareKey.Find(sources[^1].Folder.Root) : null;
            if (kept is { } last && last.Answers(asked, fingerprint, key)) return last.Data;
            // Let go before reading, so that there are never two seasons in memory for longer than need be.
            kept = null;
            var readings = sources.Select(s => word is ShareAs.Names ? s.Read() : SharedMessages.Without(s.Read)).ToList();
            var joined = SeasonJoin.Of([.. readings.Select(r => r.Data)]);
            // Only now is it sure to be a season folder.
            if (word is ShareAs.Codes) key ??= ShareKey.Make(sources[^1].Folder.Root);
            var data = word is ShareAs.Names
                ? joined.WithoutMarks()
                : SharedSeason.Of(joined, SharedNames.Of(joined.Athletes, word, key, readings.SelectMany(r => r.Data.Athletes)), hidesLines: word is ShareAs.Codes);
            if (readings.All(r => r.IsWhole)) kept = new KeptSeason(asked, fingerprint, key, data);
            return data;
        }
    }

    /// <summary>The words for how players are named.</summary>
    public static IReadOnlyList<string> ShareWords { get; } = [.. Enum.GetNames<ShareAs>().Select(n => n.ToLowerInvariant())];

    /// <summary>The private list of a season's codes: who is who. Not for any report.</summary>
    /// <param name="season">The season folder; its key is made when there is none.</param>
    /// <param name="earlier">Earlier season folders, as for <see cref="Open"/>.</param>
    /// <returns>The athletes by identifier, each with his code.</returns>
    /// <exception cref="SeasonException">A season cannot be used or joined, or the key cannot be read or written.</exception>
    public static IReadOnlyList<AthleteCode> Codes(string season, string earlier = "")
    {
        ArgumentNullException.ThrowIfNull(earlier);
        lock (Door)
        {
            var sources = EarlierFolders.Open(season, earlier);
            var athletes = SeasonJoin.Of([.. sources.Select(s => s.Read().Data)]).Athletes;
            var folder = sources[^1].Folder.Root;
            var shown = SharedNames.Shown(athletes, ShareAs.Codes, ShareKey.Find(folder) ?? ShareKey.Make(folder));
            return [.. athletes.Select(a => new AthleteCode(a.Id, a.Name, shown[a.Id]))];
        }
    }
}
