namespace Analytics.Season.Cells;

/// <summary>The words a column may hold, whatever their case, spaces or hyphens.</summary>
/// <typeparam name="T">What a word means.</typeparam>
internal sealed class WordSet<T>(string what, params (string Word, T Meaning)[] words) where T : struct
{
    private readonly Dictionary<string, T> meanings = words.ToDictionary(w => w.Word, w => w.Meaning, StringComparer.Ordinal);

    /// <summary>What the words say, for messages: "timing".</summary>
    public string What { get; } = what;

    /// <summary>The accepted words; the first word of each meaning only.</summary>
    public string Accepted { get; } = string.Join(", ", words.GroupBy(w => w.Meaning).Select(g => g.First().Word));

    /// <summary>Every word.</summary>
    public IReadOnlyList<string> All { get; } = [.. words.Select(w => w.Word)];

    /// <summary>The meaning; null when the word is not known.</summary>
    public T? Find(string cell) => meanings.TryGetValue(cell, out var meaning) || meanings.TryGetValue(Words.Normal(cell), out meaning) ? meaning : null;
}
