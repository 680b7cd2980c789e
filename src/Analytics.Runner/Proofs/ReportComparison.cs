namespace Analytics.Runner.Proofs;

/// <summary>How a report compares with one made again.</summary>
/// <param name="Values">Differences in what the report says, in reading order.</param>
/// <param name="Frame">Differences in what stands round it: styles, scripts, code, foot.</param>
/// <param name="CellsCompared">Cells of tables that were compared.</param>
/// <param name="LinesCompared">Headings and lines of text that were compared.</param>
public sealed record ReportComparison(IReadOnlyList<Difference> Values, IReadOnlyList<Difference> Frame, int CellsCompared, int LinesCompared)
{
    /// <summary>Compares a report with one made again from the same settings.</summary>
    /// <param name="report">The report in question.</param>
    /// <param name="again">The one made again.</param>
    public static ReportComparison Of(ReportFile report, ReportFile again)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(again);
        var sameLibrary = report.Proof.Library == again.Proof.Library;
        var expected = again.Proof.Values.SelectMany(v => v.Value).ToList();
        return new ReportComparison(
            [.. Results(report, again, sameLibrary), .. Charts(report, again)],
            [.. FrameComparison.Of(report, again, sameLibrary)],
            expected.OfType<PageTable>().Sum(t => t.Rows.Sum(r => r.Count)),
            expected.Count(i => i is not PageTable));
    }

    /// <summary>What a report says otherwise than its own proof: where it was changed after it was made.</summary>
    /// <param name="report">The report.</param>
    public static IReadOnlyList<Difference> WithItself(ReportFile report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var under = "";
        var found = new List<Difference>();
        foreach (var (name, text) in report.Parts.Where(p => PartNames.IsResult(p.Key)))
        {
            var told = report.Proof.Values.FirstOrDefault(v => v.Key == name).Value ?? [];
            if (report.Changed.Contains(name))
                found.AddRange(ContentDifferences.Between([.. ContentReader.Read(text).Where(i => i is not PageDrawing)], told, under));
            under = LastHeading(told) ?? under;
        }

        if (report.Changed.Contains(PartNames.Foot))
            found.AddRange(FrameComparison.Foot(report.Proof, report.Part(PartNames.Foot), ""));
        return found;
    }

    private static IEnumerable<Difference> Results(ReportFile report, ReportFile again, bool sameLibrary)
    {
        var under = "";
        // With their texts: a report that was tampered with may have two parts of one name.
        Tuple<string, string>[] Parts(ReportFile of) => [.. of.Parts.Where(p => PartNames.IsResult(p.Key) || p.Key == PartNames.Opening).Select(p => Tuple.Create(p.Key, p.Value))];
        foreach (var (one, other) in Pairs.Of(Parts(report), Parts(again), p => p.Item1))
        {
            string reported = one?.Item2 ?? "", expected = other?.Item2 ?? "";
            var should = ContentReader.Read(expected);
            if (reported != expected)
            {
                var differences = ContentDifferences.Between(ContentReader.Read(reported), should, under).ToList();
                // The same words in other markup: a drawing, or something hidden. Another version may well draw otherwise.
                if (differences.Count == 0 && sameLibrary)
                    differences.Add(Difference.InText($"drawing or markup under '{LastHeading(should) ?? under}'", reported, expected));
                foreach (var difference in differences)
                    yield return difference;
            }

            under = LastHeading(should) ?? under;
        }
    }

    private static IEnumerable<Difference> Charts(ReportFile report, ReportFile again)
    {
        if (PageCharts.Read(again) is not { } should)
            yield break;
        if (PageCharts.Read(report) is not { } charts)
        {
            yield return new Difference("data of the charts", "cannot be unpacked", FormattableString.Invariant($"{should.Count} charts"));
            yield break;
        }

        for (var i = 0; i < Math.Max(charts.Count, should.Count); i++)
        {
            string one = i < charts.Count ? charts[i].Value : "", other = i < should.Count ? should[i].Value : "";
            if (one != other)
                yield return Difference.InText($"data of the chart '{(i < should.Count ? should : charts)[i].Key}'", one, other);
        }
    }

    private static string? LastHeading(IEnumerable<PageItem> items) => items.OfType<PageHeading>().LastOrDefault()?.Text;
}
