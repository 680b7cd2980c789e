namespace Analytics.Statistics.Tests.Accuracy;

public sealed class AccuracyTests
{
    private static readonly ILookup<string, OracleValue> s_rows = File
        .ReadLines(Path.Combine(AppContext.BaseDirectory, "oracles", "statistics", "r-and-published.tsv")).Skip(1)
        .Select(l => l.Split('\t'))
        .ToLookup(c => c[0], c => new OracleValue(c[1], c[2], Oracle.Number(c[3]), c[4]));

    internal static IReadOnlyList<AccuracySection> All => s_sections;

    /// <summary>Sections of the file and how many rows each has.</summary>
    internal static IEnumerable<(string Section, int Rows)> InFile => s_rows.Select(g => (g.Key, g.Count()));

    private static readonly IReadOnlyList<AccuracySection> s_sections =
    [
        .. typeof(AccuracySection).Assembly.GetTypes()
            .Where(t => t is { IsAbstract: false } && t.IsSubclassOf(typeof(AccuracySection)))
            .Select(t => (AccuracySection)Activator.CreateInstance(t)!)
            .OrderBy(s => s.Section.Length).ThenBy(s => s.Section, StringComparer.Ordinal).ThenBy(s => s.GetType().Name, StringComparer.Ordinal),
    ];

    public static TheoryData<string> Sections => [.. s_sections.Select(s => s.Section).Distinct()];

    [Theory]
    [MemberData(nameof(Sections))]
    public void Every_row_agrees_or_is_explained(string section)
    {
        var book = BookOf(section);
        var missed = book.Checks.Where(c => !c.Holds).Select(c => c.ToString()).ToList();
        Assert.True(missed.Count == 0, $"{missed.Count} of {book.Checks.Count} rows differ:\n{string.Join('\n', missed)}");
        Assert.True(book.Open.Count == 0, $"{book.Open.Count} rows are neither checked nor explained:\n{string.Join('\n', book.Open.Select(r => $"{r.Case} | {r.Quantity} | {r.Call}"))}");
    }

    internal static AccuracyBook BookOf(string section)
    {
        // Several classes may share a section: rows are open until one of them takes them.
        var book = new AccuracyBook(s_rows[section]);
        foreach (var part in s_sections.Where(s => s.Section == section)) part.Fill(book);
        return book;
    }
}
