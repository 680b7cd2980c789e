using System.Buffers;
using Analytics.Season;

namespace Analytics.Notebooks.AthletePage;

/// <summary>Finds the names and identifiers of the other players in a text, so that it can be left out.</summary>
/// <remarks>Rather a text too many: a word of a name counts from three letters on.</remarks>
internal sealed class OthersFilter
{
    private const int ShortestWord = 3;

    private readonly HashSet<string> _words;
    private readonly SearchValues<string> _whole;

    public OthersFilter(SeasonData season, Athlete player)
    {
        var others = season.Athletes.Where(a => a.Id != player.Id).ToList();
        var own = Split(player.Name).Append(player.Id).ToHashSet(StringComparer.OrdinalIgnoreCase);
        _words = others.SelectMany(a => Split(a.Name).Where(w => w.Length >= ShortestWord).Append(a.Id)).Where(w => !own.Contains(w)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        // Names and identifiers that are no single words.
        _whole = SearchValues.Create([.. others.SelectMany(a => new[] { a.Name, a.Id }).Where(t => t.Length >= ShortestWord && Split(t).Count() > 1)], StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Whether a text may tell of another player.</summary>
    public bool Tells(string text) => Split(text).Any(_words.Contains) || text.AsSpan().ContainsAny(_whole);

    private static IEnumerable<string> Split(string text)
    {
        var start = -1;
        for (var i = 0; i <= text.Length; i++)
        {
            var isWord = i < text.Length && char.IsLetterOrDigit(text[i]);
            if (isWord && start < 0) start = i;
            if (isWord || start < 0) continue;
            yield return text[start..i];
            start = -1;
        }
    }
}
