using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Load;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Dose of training beside change over the same stretch: every pair, none picked.</summary>
internal static class DoseBlock
{
    private static readonly string Gaps = string.Create(CultureInfo.InvariantCulture,
        $"A session without rating, minutes or contacts counts as the player's mean one where at least {100 * DosePairs.LeastShare:0} % of his sessions have them; else he is left out there.");

    public static Block Of(SeasonContext season, TrainedStretch trained)
    {
        List<(Metric Metric, DoseMeasure Dose, DoseAgainstChange Pair)> pairs = [.. season.Headlines.SelectMany(m => DosePairs.Kinds.Zip(DosePairs.Of(season.Profile, trained, m), (dose, pair) => (m, dose, pair)))];
        if (pairs.Count == 0) return new Together();
        var looks = DoseLooks.Of([.. pairs.Select(p => p.Pair)]);
        var rows = pairs.Select((p, i) => (p.Metric, p.Dose, p.Pair, Adjusted: looks.AdjustedP[i])).GroupBy(p => p.Metric.Id).ToList();
        var table = DataTable.Of("Rank correlation of dose and change", rows, t =>
        {
            t.Text("Change in", g => new Cell(g.First().Metric.Label));
            foreach (var dose in DosePairs.Kinds) t.Numeric(Words.Capital(dose.Name()), "", g => Shown(g.First(p => p.Dose == dose)));
        });
        return new Folded($"Who did more and who changed: {pairs.Count} pairs, none picked",
            [table, new Note(Chance(looks)), new Note(Gaps), new Note(LoadCautions.Description)]);
    }

    private static Cell Shown((Metric Metric, DoseMeasure Dose, DoseAgainstChange Pair, double? Adjusted) look)
    {
        if (look.Pair.Rank is not { } rank) return new Cell(null, look.Pair.NotComputable ?? "");
        var note = string.Create(CultureInfo.InvariantCulture, $"{Figures.Limits(rank.Interval?.Low, rank.Interval?.High, 2, signed: true)} {look.Pair.Points.Count} players{(look.Adjusted <= 0.05 ? ", stands out among all pairs" : "")}");
        return new Cell(Figures.Signed(rank.Value, 2), note.Trim());
    }

    private static string Chance(DoseLooks looks) => looks.Looks == 0 ? "No pair could be computed."
        : string.Create(CultureInfo.InvariantCulture,
            $"A change counts as gain where it is better. {looks.AdjustedP.Count(p => p <= 0.05)} of {looks.Looks} pairs stand out with their number taken into account; looked at one by one, chance alone would show about {looks.ByChance.Expected:0.#}. Intervals are those of single pairs.");
}
