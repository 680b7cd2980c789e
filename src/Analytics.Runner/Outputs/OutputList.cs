using System.Text;

namespace Analytics.Runner.Outputs;

/// <summary>
/// Outputs of one cell as they arrive, from whichever thread. A snapshot can be taken at any time, also while
/// the cell is still busy.
/// </summary>
public sealed class OutputList
{
    private readonly Lock gate = new();
    private readonly List<Entry> entries = [];

    /// <summary>Adds console text; text that follows text of the same stream continues it.</summary>
    /// <param name="isError">Whether it went to standard error.</param>
    /// <param name="text">The text.</param>
    public void Write(bool isError, string text)
    {
        if (string.IsNullOrEmpty(text))
            return;
        lock (gate)
        {
            if (entries is [.., { Text: { } last } entry] && entry.IsError == isError)
                last.Append(text);
            else
                entries.Add(new Entry { Text = new StringBuilder(text), IsError = isError });
        }
    }

    /// <summary>Adds an output.</summary>
    /// <param name="output">The output.</param>
    /// <param name="key">Key under which it may be replaced later.</param>
    public void Add(CellOutput output, string? key = null)
    {
        ArgumentNullException.ThrowIfNull(output);
        lock (gate)
            entries.Add(new Entry { Output = output, Key = key });
    }

    /// <summary>Puts another value in the place of a shown one.</summary>
    /// <param name="key">Key under which it was added.</param>
    /// <param name="output">The new value.</param>
    /// <returns>False when nothing was shown under the key.</returns>
    public bool Replace(string key, CellOutput output)
    {
        lock (gate)
        {
            var entry = entries.Find(e => e.Key == key);
            if (entry is null)
                return false;
            entry.Output = output;
            return true;
        }
    }

    /// <summary>The outputs so far, in order.</summary>
    public IReadOnlyList<CellOutput> Snapshot()
    {
        lock (gate)
            return [.. entries.Select(e => e.Output ?? new StreamOutput(e.IsError, e.Text!.ToString()))];
    }

    private sealed class Entry
    {
        public CellOutput? Output { get; set; }

        public string? Key { get; init; }

        public StringBuilder? Text { get; init; }

        public bool IsError { get; init; }
    }
}
