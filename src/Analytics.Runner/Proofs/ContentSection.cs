namespace Analytics.Runner.Proofs;

/// <summary>What stands under one heading.</summary>
/// <param name="Heading">Text of the heading; empty before the first.</param>
/// <param name="Under">What to call the place: the heading, or the last one before.</param>
internal sealed record ContentSection(string Heading, string Under)
{
    public List<string> Lines { get; } = [];

    public List<string> Drawn { get; } = [];

    public List<PageTable> Tables { get; } = [];

    public static IReadOnlyList<ContentSection> Of(IEnumerable<PageItem> items, string under)
    {
        var sections = new List<ContentSection> { new("", under) };
        foreach (var item in items)
        {
            switch (item)
            {
                case PageHeading heading:
                    sections.Add(new ContentSection(heading.Text, heading.Text));
                    break;
                case PageLine line:
                    sections[^1].Lines.Add(line.Text);
                    break;
                case PageDrawing drawing:
                    sections[^1].Drawn.Add(drawing.Text);
                    break;
                case PageTable table:
                    sections[^1].Tables.Add(table);
                    break;
            }
        }

        return sections;
    }
}
