using Analytics.Metrics.Catalogue;

namespace Analytics.Metrics.Profile;

/// <summary>The retest values that may be compared with each other, as rows of a table of athletes × days.</summary>
/// <remarks>
/// A measured and an estimated value of one athlete differ by the error of the equation too, so they are never in one row. Values estimated by one
/// equation are, at whatever repetitions: with the same load a better day shows as more repetitions, and leaving out the pairs that differ
/// most would make the error look small.
/// </remarks>
/// <param name="Rows">One row an athlete, block of days and way the values were made; null where there is none.</param>
/// <param name="Repeated">Rows with two values or more.</param>
/// <param name="Estimated">Whether every row is of estimated values.</param>
/// <param name="Way">How the values were made where one way was chosen among several, in words; else null.</param>
/// <param name="LeftOut">Athletes with two values or more in a block of which none stands in a row with a repeat.</param>
internal sealed record RetestRows(IReadOnlyList<IReadOnlyList<double?>> Rows, int Repeated, bool Estimated, string? Way, int LeftOut)
{
    private sealed record Row(string AthleteId, EquationError? Equation, double?[] Cells)
    {
        public string Equations => Equation?.Equation ?? "";

        public bool IsRepeated => Cells.Count(v => v.HasValue) > 1;
    }

    /// <summary>
    /// The rows: measured repeats alone when there are enough of them, else those of the equation with enough repeats, else all of them together.
    /// </summary>
    public static RetestRows Of(Metric metric, string? series, IReadOnlyList<RepeatDays> retests, int minimum)
    {
        var all = new List<Row>();
        var withRepeat = new HashSet<string>();
        var columns = retests.Sum(r => r.Occasions.Count);
        var first = 0;
        foreach (var block in retests)
        {
            // Each block has its own columns, so true change between blocks is not error.
            var days = block.Occasions.Select(o => MetricDay.Of(metric, o, series)).ToList();
            foreach (var athlete in days.SelectMany((d, j) => d.Values.Select(v => (Value: v, Column: first + j))).GroupBy(x => x.Value.AthleteId))
            {
                if (athlete.Count() > 1) withRepeat.Add(athlete.Key);
                foreach (var way in athlete.GroupBy(x => x.Value.Equation?.Equation ?? ""))
                {
                    var cells = new double?[columns];
                    foreach (var (value, column) in way) cells[column] = value.Value;
                    all.Add(new(athlete.Key, way.First().Value.Equation, cells));
                }
            }

            first += block.Occasions.Count;
        }

        var ways = all.GroupBy(r => r.Equations).OrderBy(g => g.Key.Length > 0).ThenByDescending(g => g.Count(r => r.IsRepeated))
            .ThenBy(g => g.Key, StringComparer.Ordinal).ToList();
        var chosen = ways.Find(g => g.Count(r => r.IsRepeated) >= Math.Max(2, minimum))?.ToList() ?? all;
        var told = chosen.Count < all.Count ? chosen[0].Equation is null ? "measured" : "estimated" : null;
        var used = chosen.Where(r => r.IsRepeated).Select(r => r.AthleteId).ToHashSet();
        return new(
            [.. chosen.Select(r => r.Cells)],
            chosen.Count(r => r.IsRepeated),
            chosen.Count > 0 && chosen.TrueForAll(r => r.Equation is not null),
            told,
            withRepeat.Count(id => !used.Contains(id)));
    }

    /// <summary>What was left out, in words a report can print; null when nothing was.</summary>
    public string? LeftOutText => LeftOut == 0 ? null
        : $"Retest days: {LeftOut} athletes are left out, "
            + (Way is null ? "measured on one day and estimated on the other" : $"not {Way} on both days as the others were")
            + ": the equation's error would pass for error of the test.";
}
