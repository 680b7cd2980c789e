using System.Security.Cryptography;
using System.Text;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.AthletePage;

/// <summary>From which files and choices. Clips and files named after other players are counted, not listed; one digest covers all.</summary>
internal static class PageProvenance
{
    public static ReportBlock Of(PlayerPage page)
    {
        var season = page.Season;
        var filter = new OthersFilter(season, page.Player);
        var listed = season.Files.Where(f => !f.Path.Contains("clips/", StringComparison.OrdinalIgnoreCase) && !filter.Tells(f.Path)).ToList();
        var others = season.Files.Count - listed.Count;
        var count = season.Files.Select(f => f.Path.Split('#')[0]).Distinct(StringComparer.Ordinal).Count();
        var line = FormattableString.Invariant($"From the season {season.Settings.Season}: {count} files, {season.RowsRead} rows, SHA-256 of all {Digest(season.Files)}.");
        return new Together(
            new Note(line),
            new Folded("The files one by one",
                new Definitions(
                    ("Day of the page", Words.Date(page.Today)),
                    ("Compared with", HeadBlock.Compared(page) is { } before ? Words.Date(before) + (page.Measures.Where(m => m.Change is not null).Select(m => m.Before!.Date).Distinct().Count() > 1 ? " or the day named in the row" : "") : "nothing"),
                    ("Units shown", $"{season.Settings.MassUnit}, {season.Settings.JumpUnit}, {season.Settings.SpeedUnit}; bars in steps of {page.Bar.Text(page.Bar.Step)}"),
                    ("The digest over all", "SHA-256 of the lines \u201Cpath, tab, SHA-256 of the file\u201D, sorted by path.")),
                DataTable.Of("Files read", listed, t => t
                    .Text("File", f => f.Path)
                    .Number("Rows", "", 0, f => f.Rows)
                    .Text("SHA-256", f => f.Sha256.Length >= 16 ? f.Sha256 : "not read")),
                new Note(others == 0 ? "Every file is listed." : $"{Words.Capital(Words.Count(others))} more, clips or files named after players, {(others == 1 ? "is" : "are")} counted here and not listed.")));
    }

    private static string Digest(IReadOnlyList<InputFile> files)
        => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(files.Select(f => $"{f.Path}\t{f.Sha256}\n").Order(StringComparer.Ordinal)))));
}
