using Analytics.Season.Cells;

namespace Analytics.Season.Intake;

/// <summary>Takes the marks out of the messages of a season before it is handed out.</summary>
internal static class PlainMessages
{
    /// <summary>The season with plain messages.</summary>
    public static SeasonData WithoutMarks(this SeasonData season) => season with
    {
        HeldBack = [.. season.HeldBack.Select(h => h with { Column = CellMarks.Strip(h.Column), Value = CellMarks.Strip(h.Value), Reason = CellMarks.Strip(h.Reason), Remedy = CellMarks.Strip(h.Remedy) })],
        Notes = [.. season.Notes.Select(n => n with { Text = CellMarks.Strip(n.Text) })],
    };
}
