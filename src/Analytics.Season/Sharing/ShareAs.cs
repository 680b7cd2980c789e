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
internal static class ShareWords
{
    /// <summary>Reads a word.</summary>
    /// <exception cref="SeasonException">It is none of them.</exception>
    public static ShareAs Read(string word) => word.Trim().ToUpperInvariant() switch
    {
        "NAMES" => ShareAs.Names,
        "INITIALS" => ShareAs.Initials,
        "CODES" => ShareAs.Codes,
        _ => throw new SeasonException($"share is '{CellText.Show(word)}'; it is one of names, initials, codes."),
    };
}
