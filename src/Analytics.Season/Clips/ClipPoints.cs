using Analytics.Season.Intake;

namespace Analytics.Season.Clips;

/// <summary>A digitised point as read.</summary>
/// <param name="Frame">Its frame.</param>
/// <param name="X">x, px.</param>
/// <param name="Y">y, px.</param>
/// <param name="Line">Line of the file.</param>
internal readonly record struct ClipPoint(int Frame, double X, double Y, int Line);

/// <summary>The points of one marker, in file order; frames are unique.</summary>
/// <param name="Written">Name as written.</param>
/// <param name="Head">Column a fault of it is told in.</param>
internal sealed record MarkerPoints(string Written, string Head)
{
    /// <summary>The points.</summary>
    public List<ClipPoint> Points { get; } = [];

    /// <summary>Frames whose row for this marker was read, seen or not, and the line.</summary>
    public Dictionary<int, int> Lines { get; } = [];
}

/// <summary>A file of digitised points as read.</summary>
/// <param name="Tally">Its count.</param>
/// <param name="IsWide">Whether a row holds a frame; else a point.</param>
internal sealed record ClipPoints(FileTally Tally, bool IsWide)
{
    /// <summary>Markers by name in lower case with underscores.</summary>
    public Dictionary<string, MarkerPoints> Markers { get; } = new(StringComparer.Ordinal);

    /// <summary>Rows in order so far.</summary>
    public int GoodRows { get; set; }
}
