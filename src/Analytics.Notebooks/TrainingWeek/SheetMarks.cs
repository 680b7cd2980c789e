using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Loads;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Short marks beside loads, with what they mean: as many as a sheet needs, explained at its foot.</summary>
internal sealed class SheetMarks
{
    private readonly List<(string Symbol, string Text)> _texts = [];

    /// <summary>Marks and their meaning, in the order they were first used.</summary>
    public IEnumerable<(string Mark, string Text)> Legend => _texts.Select((t, i) => (Mark(i), t.Text));

    /// <summary>Marks of a load, without the notes that stand elsewhere.</summary>
    public string Of(Prescription load, IReadOnlyCollection<string> elsewhere)
        => string.Join(' ', load.Notes.Where(n => !elsewhere.Contains(n)).Select(n => For(SymbolOf(n), n)).Concat(load.Instead is { } instead && Short(instead) != instead ? [For("?", instead)] : []).Distinct());

    /// <summary>What stands in the place of a load, short enough for a cell.</summary>
    public static string Short(string instead)
    {
        var end = instead.IndexOfAny([':', ';', '(']);
        return end > 0 ? instead[..end].TrimEnd() : instead;
    }

    private static string SymbolOf(string note)
        => note.StartsWith("lower side", StringComparison.Ordinal) ? "\u2193"
            : note.Contains("only with the coach", StringComparison.Ordinal) ? "!"
            : note.StartsWith("held at", StringComparison.Ordinal) ? "=" : "\u2020";

    private string For(string symbol, string text)
    {
        var at = _texts.FindIndex(t => t.Text == text);
        if (at < 0)
        {
            at = _texts.Count;
            _texts.Add((symbol, text));
        }

        return Mark(at);
    }

    // A second meaning of the same symbol gets a number.
    private string Mark(int at)
    {
        var before = _texts.Take(at).Count(t => t.Symbol == _texts[at].Symbol);
        return before == 0 ? _texts[at].Symbol : Invariant($"{_texts[at].Symbol}{before + 1}");
    }

    /// <summary>The legend in one sentence; empty when nothing is marked.</summary>
    public string Text => string.Join("; ", Legend.Select(l => $"{l.Mark} {Words.Signs(l.Text)}"));
}
