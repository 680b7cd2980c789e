namespace Analytics.Runner.Proofs;

/// <summary>Reads one table as its tags go by.</summary>
/// <param name="title">What the table is called when it has no caption of its own.</param>
internal sealed class TableReader(string title)
{
    private readonly List<string> heads = [];
    private readonly List<IReadOnlyList<string>> rows = [];
    private List<string> row = [];
    private string caption = title;
    private bool rowIsHead = true;

    /// <summary>Takes a tag and the text since the one before.</summary>
    public void Take(HtmlToken token, string text)
    {
        switch (token)
        {
            case { Kind: HtmlTokenKind.Close, Name: "caption" }:
                caption = text;
                break;
            case { Kind: HtmlTokenKind.Close, Name: "th" }:
                row.Add(text);
                break;
            case { Kind: HtmlTokenKind.Close, Name: "td" }:
                row.Add(text);
                rowIsHead = false;
                break;
            case { Name: "tr" }:
                EndRow();
                break;
        }
    }

    public PageTable? Result()
    {
        EndRow();
        return heads.Count == 0 && rows.Count == 0 ? null : new PageTable(caption, heads, rows);
    }

    private void EndRow()
    {
        if (row.Count > 0 && rowIsHead && rows.Count == 0 && heads.Count == 0)
            heads.AddRange(row);
        else if (row.Count > 0)
            rows.Add(row);
        row = [];
        rowIsHead = true;
    }
}
