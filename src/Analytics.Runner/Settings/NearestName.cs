namespace Analytics.Runner.Settings;

/// <summary>Finds the name a slip of the finger was meant to be.</summary>
internal static class NearestName
{
    /// <summary>The known name fewest edits away, or null when none is near: at most a third of the longer name.</summary>
    public static string? To(string typed, IEnumerable<string> known)
    {
        var best = known
            .Select(name => (Name: name, Edits: Edits(Fold(typed), Fold(name))))
            .OrderBy(x => x.Edits).ThenBy(x => x.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return best.Name is { } candidate && best.Edits <= Math.Max(typed.Length, candidate.Length) / 3 ? candidate : null;
    }

    // People write a name of two words in many ways.
    private static string Fold(string name) => name.Replace("-", "", StringComparison.Ordinal).Replace("_", "", StringComparison.Ordinal).ToUpperInvariant();

    private static int Edits(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var substituted = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(substituted, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
