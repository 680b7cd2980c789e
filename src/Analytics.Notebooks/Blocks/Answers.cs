using System.Text.RegularExpressions;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Blocks;

/// <summary>One answer: a sentence that concludes and a sentence of numbers.</summary>
/// <param name="Conclusion">The conclusion, also when it is "no evidence yet".</param>
/// <param name="Numbers">The numbers behind it, with interval and count.</param>
/// <param name="Tone">Colour of the rule above it; the words say the same.</param>
public sealed record Answer(string Conclusion, string Numbers, Tone Tone = Tone.Plain);

/// <summary>The answers at the top of a report; a reader may stop after them.</summary>
public sealed partial class Answers : ReportBlock
{
    private readonly IReadOnlyList<Answer> _answers;

    /// <summary>Answers in the order they matter, usually three.</summary>
    /// <param name="answers">At least one answer.</param>
    public Answers(params IEnumerable<Answer> answers)
    {
        _answers = [.. answers];
        if (_answers.Count == 0) throw new ArgumentException("Answers needs at least one answer; say \"no evidence yet\" when there is none.", nameof(answers));
    }

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        html.Raw("<ul class=\"an\">");
        foreach (var answer in _answers)
            html.Add($"<li{ToneClass.Attribute(answer.Tone)}><b>{Unbroken(answer.Conclusion)}</b><span>{Unbroken(answer.Numbers)}</span></li>");
        html.Raw("</ul>");
    }

    // "10-yard" stays on one line.
    private static string Unbroken(string text) => NumberHyphen().Replace(text, "\u2011");

    [GeneratedRegex(@"(?<=\d)-(?=\p{L})")]
    private static partial Regex NumberHyphen();

    /// <inheritdoc/>
    public override string ToText() => string.Join('\n', _answers.Select(a => $"* {a.Conclusion}\n  {a.Numbers}"));
}
