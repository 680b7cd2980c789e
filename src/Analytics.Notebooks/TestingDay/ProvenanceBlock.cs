using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Season;

namespace Analytics.Notebooks.TestingDay;

/// <summary>From which files, with which digests, under which choices.</summary>
internal static class ProvenanceBlock
{
    public static Block Of(DayContext day) => Of(day.Season,
        ("Testing day", Words.Date(day.Today.Date)),
        ("Compared with", day.Before is null ? "no earlier day" : Words.Date(day.Before.Date)));

    /// <summary>The files of a season and its choices.</summary>
    /// <param name="season">The season.</param>
    /// <param name="about">What the report is about, in its own terms.</param>
    public static Block Of(SeasonData season, params IEnumerable<(string Term, string Text)> about)
    {
        var files = season.Files.GroupBy(f => f.Sha256.Length > 0 ? f.Sha256 : f.Path, StringComparer.Ordinal).SelectMany(g => g).ToList();
        var retests = season.Settings.Retests.Count == 0 ? "none"
            : string.Join("; ", season.Settings.Retests.Select(r => $"{Words.Date(r.First)} and {Words.Date(r.Second)}"));
        return new Folded($"Where this comes from: {files.Select(f => f.Path.Split('#')[0]).Distinct().Count()} files, {season.RowsRead} rows",
            new Definitions([
                ("Season", season.Settings.Season),
                .. about,
                ("Retest days", retests),
                ("Units shown", $"{season.Settings.MassUnit}, {season.Settings.JumpUnit}, {season.Settings.SpeedUnit}"),
                ("Smallest worthwhile change", season.Settings.WorthwhileShare.ToString(CultureInfo.InvariantCulture) + " of the spread within groups" + (season.Settings.Worthwhile.Count > 0 ? ", or set by the coach: " + string.Join(", ", season.Settings.Worthwhile.OrderBy(w => w.Key, StringComparer.Ordinal).Select(w => $"{w.Key} {w.Value.ToString(CultureInfo.InvariantCulture)}")) : "")),
            ]),
            DataTable.Of("Files read", files, t => t
                .Text("File", f => f.Path)
                .Number("Rows", "", 0, f => f.Rows)
                .Number("Kept", "", 0, f => f.Kept)
                .Number("Held back", "", 0, f => f.HeldBack)
                .Text("SHA-256", f => f.Sha256.Length >= 16 ? f.Sha256 : "not read")));
    }
}
