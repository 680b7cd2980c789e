using System.Text.RegularExpressions;
using Analytics.Season.Cells;

namespace Analytics.Season.Sharing;

/// <summary>Who is called what in a shared season, and what a text may still say.</summary>
internal sealed class SharedNames
{
    /// <summary>Stands where something was that may name a person.</summary>
    public const string NotShown = "(not shown)";

    // A number, a date or a time; anything longer may be a telephone number.
    private const int LongestNumber = 12;

    private readonly IReadOnlyDictionary<string, string> byId;
    private readonly Dictionary<string, string> people = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, int> order = new(StringComparer.Ordinal);
    private readonly Regex? distinct;
    private readonly Regex? whole;
    private readonly Regex? notGroups;
    private readonly Regex? words;

    /// <summary>Makes it.</summary>
    /// <param name="athletes">The athletes.</param>
    /// <param name="shown">What each is called, by identifier.</param>
    /// <param name="othersNames">Further names of them: those of earlier seasons.</param>
    public SharedNames(IReadOnlyList<Athlete> athletes, IReadOnlyDictionary<string, string> shown, IEnumerable<(string Id, string Name)> othersNames)
    {
        byId = shown;
        foreach (var (id, name) in athletes.Select(a => (a.Id, a.Name)).Concat(othersNames))
            foreach (var text in new[] { name, CellText.OneLine(name) })
                people[text] = people.TryGetValue(text, out var other) && other != shown[id] ? NotShown : shown[id];
        foreach (var athlete in athletes) people[athlete.Id] = shown[athlete.Id];

        foreach (var name in shown.Values.OrderBy(Stem, StringComparer.Ordinal).ThenBy(n => n.Length).ThenBy(n => n, StringComparer.Ordinal)) order.Add(name, order.Count);
        var full = people.Keys.Where(p => p.Any(char.IsLetter)).ToList();
        var parts = full.SelectMany(p => p.Split([' ', ',', '.', '-', '\'', '’', '_'], StringSplitOptions.RemoveEmptyEntries)).Where(p => p.Length > 2 && p.Any(char.IsLetter));
        distinct = AnyOf(full.Where(p => p.Any(char.IsDigit) || p.Any(char.IsWhiteSpace)));
        whole = AnyOf(full);
        var groups = athletes.SelectMany(a => new[] { a.Position, a.Group }).ToHashSet(StringComparer.OrdinalIgnoreCase);
        notGroups = AnyOf(full.Where(p => !groups.Contains(p)));
        words = AnyOf(full.Concat(parts));
    }

    /// <summary>Makes what players are called, and what texts may say.</summary>
    /// <param name="athletes">The athletes.</param>
    /// <param name="share">Initials or codes.</param>
    /// <param name="key">The season's key; not used for initials.</param>
    /// <param name="everCalled">The same athletes as each of the joined seasons calls them.</param>
    public static SharedNames Of(IReadOnlyList<Athlete> athletes, ShareAs share, byte[]? key, IEnumerable<Athlete> everCalled)
        => new(athletes, Shown(athletes, share, key), everCalled.Select(a => (a.Id, a.Name)));

    /// <summary>What each athlete is called, by identifier.</summary>
    /// <param name="athletes">The athletes.</param>
    /// <param name="share">Initials or codes.</param>
    /// <param name="key">The season's key; not used for initials.</param>
    public static IReadOnlyDictionary<string, string> Shown(IReadOnlyList<Athlete> athletes, ShareAs share, byte[]? key)
    {
        var taken = athletes.SelectMany(a => a.Name.Split(' ').Append(a.Id).Append(a.Name)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return share is ShareAs.Codes ? AthleteCodes.Of(athletes, key!, taken.Contains) : AthleteInitials.Of(athletes, taken.Contains);
    }

    /// <summary>What an athlete is called.</summary>
    public string Of(string id) => byId[id];

    /// <summary>His place in the order athletes are shown: by what they are called, since the order of their identifiers would tell who is who.</summary>
    public int Place(string shown) => order[shown];

    /// <summary>An identifier or name as a message may show it. Of a name nothing stays: where one was typed for an identifier, what he is called would read as if it had been right.</summary>
    public string Person(string text) => text.Length is 0 ? "" : byId.GetValueOrDefault(text, NotShown);

    /// <summary>Text of a cell as it may be shown: short numbers and dates only. Nobody can tell whether a word is a name.</summary>
    public string Cell(string text)
        => people.ContainsKey(text) || text.Length > LongestNumber || text.Any(c => char.IsLetter(c) || char.IsSurrogate(c)) ? NotShown : text;

    /// <summary>A message without what came from cells, and without players.</summary>
    public string Message(string text) => Without(distinct, CellMarks.Replace(text, Cell, Person));

    /// <summary>Name of the club or of a season: without identifiers and full names.</summary>
    public string Title(string text) => Without(whole, text);

    /// <summary>A position or group: without identifiers and full names, but for an identifier such as LB that is a position too.</summary>
    public string Group(string text) => Without(notGroups, text);

    /// <summary>Words a coach typed about training or a test: without identifiers, names and parts of names.</summary>
    public string Words(string text) => people.TryGetValue(text, out var shown) ? shown : Without(words, text);

    private string Without(Regex? any, string text) => any is null ? text : any.Replace(text, m => people.GetValueOrDefault(m.Value, NotShown));

    private static Regex? AnyOf(IEnumerable<string> words)
    {
        var all = words.Distinct(StringComparer.OrdinalIgnoreCase).OrderByDescending(w => w.Length).Select(Regex.Escape).ToList();
        return all.Count is 0 ? null : new Regex($@"(?<![\p{{L}}\p{{N}}])(?:{string.Join('|', all)})(?![\p{{L}}\p{{N}}])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
    }

    // "A. B. 2" stands before "A. B. 10".
    private static string Stem(string shown) => shown.Contains(' ', StringComparison.Ordinal) ? shown.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9') : shown;
}
