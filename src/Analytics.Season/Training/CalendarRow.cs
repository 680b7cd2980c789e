using Analytics.Planning.Weeks;
using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Training;

/// <summary>Where a row stands whose fate is settled once all rows are known.</summary>
internal sealed record RowPlace(string Path, int Line, FileTally Tally)
{
    /// <summary>The place as another row of the folder names it.</summary>
    public string SeenFrom(RowPlace other) => FormattableString.Invariant($"{(Path == other.Path ? "" : Path + " ")}line {Line}");

    /// <summary>Holds the row back.</summary>
    public void HoldBack(string column, string value, string reason, string remedy, string? athleteId = null) => Tally.HoldBack(Line, [new CellFault(column, Cells.CellText.Show(value), reason, remedy)], athleteId);
}

/// <summary>A row of the calendar that is in order by itself: a game or a session.</summary>
internal sealed record CalendarRow(RowPlace Place, Game? Game, SessionSlot? Session, string Written);
