namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Notes of a sheet: each text once, with a letter that stands beside the loads it is about.</summary>
internal sealed class SheetNotes
{
    private readonly List<string> _texts = [];

    /// <summary>The notes in the order met, with their letters.</summary>
    public IEnumerable<(string Mark, string Text)> All => _texts.Select((t, i) => (Letter(i), t));

    /// <summary>Letters of some notes, together.</summary>
    public string Marks(IEnumerable<string> texts) => string.Concat(texts.Distinct().Select(Mark));

    private string Mark(string text)
    {
        var at = _texts.IndexOf(text);
        if (at < 0)
        {
            at = _texts.Count;
            _texts.Add(text);
        }

        return Letter(at);
    }

    // a to z, then aa, ab.
    private static string Letter(int index) => index < 26 ? ((char)('a' + index)).ToString() : Letter(index / 26 - 1) + Letter(index % 26);
}
