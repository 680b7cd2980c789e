namespace Analytics.Runner.Proofs;

/// <summary>Finds what belongs together in two lists.</summary>
internal static class Pairs
{
    /// <summary>
    /// Pairs of the same name, the second of a name with the second; what is left over is paired in order, and alone
    /// where the other list has no more.
    /// </summary>
    public static IEnumerable<(T? One, T? Other)> Of<T>(IReadOnlyList<T> ones, IReadOnlyList<T> others, Func<T, string> name)
        where T : class
    {
        var places = new Dictionary<(string, int), int>();
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < others.Count; i++)
            places[Numbered(others[i], name, seen)] = i;
        seen.Clear();
        var match = ones.Select(o => places.TryGetValue(Numbered(o, name, seen), out var at) ? at : -1).ToArray();
        var taken = match.Where(m => m >= 0).ToHashSet();
        var left = new Queue<T>(others.Where((_, i) => !taken.Contains(i)));
        for (var i = 0; i < ones.Count; i++)
            yield return (ones[i], match[i] >= 0 ? others[match[i]] : left.TryDequeue(out var next) ? next : null);
        while (left.TryDequeue(out var rest))
            yield return (null, rest);
    }

    private static (string, int) Numbered<T>(T item, Func<T, string> name, Dictionary<string, int> seen)
    {
        var text = name(item);
        return (text, seen[text] = seen.GetValueOrDefault(text) + 1);
    }
}
