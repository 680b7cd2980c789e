namespace Analytics.Season.Cells;

/// <summary>Finds the known word a misspelt one was probably meant to be.</summary>
internal static class NearWord
{
    /// <summary>The nearest of the known words; null when none is near.</summary>
    /// <param name="word">As written.</param>
    /// <param name="known">Known words.</param>
    public static string? Of(string word, IEnumerable<string> known) => AllOf(word, known) is [var first, ..] ? first : null;

    /// <summary>The known words that are equally near; none when none is near.</summary>
    /// <param name="word">As written.</param>
    /// <param name="known">Known words.</param>
    public static IReadOnlyList<string> AllOf(string word, IEnumerable<string> known)
    {
        if (word.Length is 0 or > 64) return [];
        var nearest = new List<string>();
        // A third of the word may be wrong, but never more than three letters.
        var least = Math.Clamp(word.Length / 3, 1, 3);
        foreach (var candidate in known)
        {
            var distance = Distance(word.ToLowerInvariant(), candidate.ToLowerInvariant());
            if (distance > least) continue;
            if (distance < least) nearest.Clear();
            least = distance;
            nearest.Add(candidate);
        }

        return nearest;
    }

    /// <summary>Edits between two words, a swap of neighbours counting one (optimal string alignment).</summary>
    private static int Distance(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > 3) return int.MaxValue;
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++) d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++) d[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }

        return d[a.Length, b.Length];
    }
}
