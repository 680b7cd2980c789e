using Analytics.Season.Cells;

namespace Analytics.Season.Sharing;

/// <summary>How players are named.</summary>
internal enum ShareAs
{
    /// <summary>By name.</summary>
    Names,

    /// <summary>By initials.</summary>
    Initials,

    /// <summary>By codes made with the season's key.</summary>
    Codes,
}

/// <summary>The words for it.</summary>
internal static class ShareWord
{
    /// <summary>Reads a word.</summary>
    /// <exception cref="SeasonException">It is none of them.</exception>
    public static ShareAs Read(string word)
        => SeasonShelf.ShareWords.Contains(word.Trim(), StringComparer.OrdinalIgnoreCase) ? Enum.Parse<ShareAs>(word, ignoreCase: true)
            : throw new SeasonException($"share is '{CellText.Show(word)}'; it is one of {string.Join(", ", SeasonShelf.ShareWords)}.");
}
