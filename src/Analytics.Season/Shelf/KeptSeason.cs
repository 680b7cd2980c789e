namespace Analytics.Season.Shelf;

/// <summary>A season that was read, and what it was read from.</summary>
/// <param name="Asked">Folders and words it was asked for with.</param>
/// <param name="Fingerprint">Fingerprint of the folders before they were read.</param>
/// <param name="Key">The key its codes were made with; null without codes.</param>
/// <param name="Data">The season.</param>
internal sealed record KeptSeason(string Asked, string Fingerprint, byte[]? Key, SeasonData Data)
{
    /// <summary>Whether it is still what a reading would give.</summary>
    public bool Answers(string asked, string fingerprint, byte[]? key) => Asked == asked && Fingerprint == fingerprint && Key.AsSpan().SequenceEqual(key);
}
