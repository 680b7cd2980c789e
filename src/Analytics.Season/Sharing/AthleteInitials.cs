using System.Text;

namespace Analytics.Season.Sharing;

/// <summary>Initials of athletes: first letters of the first and last word of a name, with a number where several have the same.</summary>
internal static class AthleteInitials
{
    private static readonly HashSet<string> Suffixes = new(["JR", "SR", "II", "III", "IV", "V"], StringComparer.Ordinal);

    /// <summary>The initials by identifier, in the order athletes are shown.</summary>
    /// <param name="athletes">The athletes.</param>
    /// <param name="isTaken">Words no initials may be, such as identifiers.</param>
    public static IReadOnlyDictionary<string, string> Of(IEnumerable<Athlete> athletes, Func<string, bool> isTaken)
    {
        var shown = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var same in athletes.GroupBy(a => Of(a.Name), StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var alone = same.Count() is 1 && !isTaken(same.Key);
            var number = 0;
            foreach (var athlete in same.OrderByDescending(a => a.InLatestSeason).ThenBy(a => a.Id, StringComparer.Ordinal))
            {
                var initials = same.Key;
                while (!alone && isTaken(initials = FormattableString.Invariant($"{same.Key} {++number}")))
                {
                }

                shown.Add(athlete.Id, initials);
            }
        }

        return shown;
    }

    /// <summary>"Ada Mary Stone" and "Stone, Ada" as "A. S."; a name without letters as "?".</summary>
    public static string Of(string name)
    {
        var comma = name.IndexOf(',', StringComparison.Ordinal);
        var words = Words(comma > 0 && Words(name[(comma + 1)..]).Count > 0 ? $"{name[(comma + 1)..]} {name[..comma]}" : name);
        return words.Count switch
        {
            0 => "?",
            1 => $"{First(words[0])}.",
            _ => $"{First(words[0])}. {First(words[^1])}.",
        };
    }

    private static List<string> Words(string name)
    {
        var words = name.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Where(w => w.EnumerateRunes().Any(Rune.IsLetter)).ToList();
        return words.Count > 1 && Suffixes.Contains(words[^1].Trim('.', ',').ToUpperInvariant()) ? words[..^1] : words;
    }

    private static string First(string word) => Rune.ToUpperInvariant(word.EnumerateRunes().First(Rune.IsLetter)).ToString();
}
