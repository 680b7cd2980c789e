namespace Analytics.Season;

/// <summary>Opens the season a notebook is about.</summary>
public static class SeasonShelf
{
    /// <summary>Reads a season.</summary>
    /// <param name="season">The season folder.</param>
    /// <param name="earlier">Earlier season folders to join on athlete_id, oldest first, separated by semicolons; empty for none.</param>
    /// <param name="share">How players are named: <c>names</c>, <c>initials</c> or <c>codes</c>.</param>
    /// <exception cref="SeasonException">A season cannot be used, or <paramref name="share"/> is none of the three words.</exception>
    public static SeasonData Open(string season, string earlier = "", string share = "names")
        => earlier.Length == 0 && share == "names" ? SeasonReader.Read(season) : throw new SeasonException("Joining seasons and sharing without names come with the next change.");
}
