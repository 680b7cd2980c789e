using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Season;

namespace Analytics.Notebooks.AthletePage;

/// <summary>The player's own rows that were held back; those of others are in the coach's report.</summary>
internal static class OwnRows
{
    private const int Shown = 20;

    private const string Hidden = "the remark may name another player; your coach has it";

    public static ReportBlock Of(PlayerPage page)
    {
        var rows = page.Season.HeldBack.Where(r => r.AthleteId == page.Player.Id).ToList();
        if (rows.Count == 0) return new Together();
        var filter = new OthersFilter(page.Season, page.Player);
        string Safe(string text) => filter.Tells(text) ? Hidden : text;
        return new Folded(
            string.Create(CultureInfo.InvariantCulture, $"{rows.Count} of your rows {(rows.Count == 1 ? "was" : "were")} held back and not used; your coach can mend {(rows.Count == 1 ? "it" : "them")}"),
            DataTable.Of("Your rows that were held back", rows, t => t
                .Text("Where", r => new Cell(Place(r, filter), Safe(r.Column)))
                .Text("Value", r => Safe(r.Value))
                .Text("What is wrong", r => Safe(r.Reason))
                .Text("What would mend it", r => Safe(r.Remedy)), Shown));
    }

    private static string Place(HeldBackRow row, OthersFilter filter)
    {
        var file = filter.Tells(row.File) ? "a file of the season" : row.File;
        return row.Line > 0 ? string.Create(CultureInfo.InvariantCulture, $"{file}, line {row.Line}") : file;
    }
}
