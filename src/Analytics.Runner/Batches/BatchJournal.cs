using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Analytics.Runner.Files;

namespace Analytics.Runner.Batches;

/// <summary>
/// What batches have made in a folder, so that the next one can go on where one ended. A page is noted after it is in
/// place; one that is not as noted is made anew.
/// </summary>
internal sealed class BatchJournal
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n" };

    private readonly string file;
    private readonly SortedDictionary<string, JournalEntry> entries = new(StringComparer.Ordinal);

    private BatchJournal(string file) => this.file = file;

    public IReadOnlyCollection<JournalEntry> Entries => entries.Values;

    /// <summary>Reads the journal of a folder. One that is missing or damaged notes nothing.</summary>
    public static BatchJournal Read(string file)
    {
        var journal = new BatchJournal(file);
        try
        {
            foreach (var entry in (JsonNode.Parse(File.ReadAllBytes(file))?["pages"] as JsonArray ?? []).Select(JournalEntry.From).OfType<JournalEntry>())
                journal.entries[entry.Value] = entry;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or JsonException or InvalidOperationException)
        {
            journal.entries.Clear();
        }

        return journal;
    }

    public JournalEntry? Find(string value) => entries.GetValueOrDefault(value);

    /// <summary>Whether the page for a value is there, complete, as it was written, and made from the same things.</summary>
    public bool Holds(string value, string madeFrom, ResultTarget target)
    {
        if (Find(value) is not { IsComplete: true } entry || entry.MadeFrom != madeFrom || entry.Page != Path.GetFileName(target.Page))
            return false;
        try
        {
            return SteadyDigest.OfPage(File.ReadAllBytes(target.Page)) == entry.PageSha256 && SteadyDigest.OfNotebook(File.ReadAllBytes(target.Notebook)) == entry.NotebookSha256;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Notes a page and writes the journal.</summary>
    public void Note(JournalEntry entry, ResultFiles files)
    {
        entries[entry.Value] = entry;
        Write(files);
    }

    /// <summary>Forgets pages whose files are gone.</summary>
    public void ForgetMissing(string folder)
    {
        foreach (var entry in entries.Values.Where(e => !File.Exists(Path.Combine(folder, e.Page))).ToList())
            entries.Remove(entry.Value);
    }

    private void Write(ResultFiles files)
    {
        var json = new JsonObject { ["pages"] = new JsonArray([.. entries.Values.Select(e => e.ToJson())]) };
        files.Write(file, Encoding.UTF8.GetBytes(json.ToJsonString(Indented) + "\n"));
    }
}
