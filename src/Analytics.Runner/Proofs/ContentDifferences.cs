namespace Analytics.Runner.Proofs;

/// <summary>Says where two readings of the same part of a page differ: headings, lines, and tables cell by cell.</summary>
public static class ContentDifferences
{
    /// <summary>The differences, in reading order.</summary>
    /// <param name="reported">What the report says.</param>
    /// <param name="expected">What it should say.</param>
    /// <param name="under">The last heading before this part; empty for none.</param>
    public static IEnumerable<Difference> Between(IReadOnlyList<PageItem> reported, IReadOnlyList<PageItem> expected, string under = "")
        => Pairs.Of(ContentSection.Of(reported, under), ContentSection.Of(expected, under), s => s.Heading).SelectMany(p => Section(p.One, p.Other, under));

    private static IEnumerable<Difference> Section(ContentSection? reported, ContentSection? expected, string under)
    {
        reported ??= new ContentSection("", under);
        expected ??= new ContentSection("", under);
        var place = Under(expected.Under.Length > 0 ? expected.Under : reported.Under);
        if (reported.Heading != expected.Heading)
            yield return new Difference("heading", reported.Heading, expected.Heading);
        foreach (var difference in Lines($"text{place}", reported.Lines, expected.Lines))
            yield return difference;
        foreach (var (one, other) in Pairs.Of(reported.Tables, expected.Tables, t => t.Caption))
        {
            foreach (var difference in Table(one, other, place))
                yield return difference;
        }

        foreach (var difference in Lines($"drawing{place}", reported.Drawn, expected.Drawn))
            yield return difference;
    }

    private static string Under(string heading) => heading.Length == 0 ? "" : $" under '{heading}'";

    // Lines of the same text belong together, wherever they stand.
    private static IEnumerable<Difference> Lines(string place, IReadOnlyList<string> reported, IReadOnlyList<string> expected)
        => Pairs.Of(reported, expected, l => l).Where(p => p.One != p.Other).Select(p => Difference.InText(place, p.One ?? "", p.Other ?? ""));

    private static IEnumerable<Difference> Table(PageTable? reported, PageTable? expected, string place)
    {
        var name = (expected ?? reported)!.Caption is { Length: > 0 } caption ? $"table '{caption}'" : $"table{place}";
        if (reported is null || expected is null)
        {
            yield return new Difference(name, reported is null ? "" : Size(reported), expected is null ? "" : Size(expected));
            yield break;
        }

        if (reported.Caption != expected.Caption)
            yield return new Difference($"{name}, caption", reported.Caption, expected.Caption);
        foreach (var (one, other) in Pairs.Of(reported.Heads, expected.Heads, h => h).Where(p => p.One != p.Other))
            yield return new Difference($"{name}, column heads", one ?? "", other ?? "");
        foreach (var (one, other) in Pairs.Of(reported.Rows, expected.Rows, Name))
        {
            foreach (var difference in Row(name, Name((other ?? one)!), one, other, expected.Heads))
                yield return difference;
        }
    }

    private static IEnumerable<Difference> Row(string table, string row, IReadOnlyList<string>? reported, IReadOnlyList<string>? expected, IReadOnlyList<string> heads)
    {
        var place = $"{table}, row '{row}'";
        if (reported is null || expected is null)
        {
            yield return new Difference(place, reported is null ? "" : string.Join(", ", reported), expected is null ? "" : string.Join(", ", expected));
            yield break;
        }

        for (var i = 0; i < Math.Max(reported.Count, expected.Count); i++)
        {
            string one = i < reported.Count ? reported[i] : "", other = i < expected.Count ? expected[i] : "";
            if (one != other)
                yield return Difference.InText(i < heads.Count ? $"{place}, column '{heads[i]}'" : place, one, other) with { Row = row, Column = i < heads.Count ? heads[i] : "" };
        }
    }

    private static string Name(IReadOnlyList<string> row) => row.Count > 0 ? row[0] : "";

    private static string Size(PageTable table) => FormattableString.Invariant($"a table of {table.Rows.Count} rows");
}
