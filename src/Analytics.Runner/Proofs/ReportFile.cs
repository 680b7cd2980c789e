using System.Text;
using Analytics.Runner.Pages;

namespace Analytics.Runner.Proofs;

/// <summary>A report as found in a file: its proof, and its text cut into the parts the proof tells of.</summary>
public sealed class ReportFile
{
    /// <summary>No report and nothing packed in one is larger.</summary>
    internal const long LargestBytes = 64 << 20;

    private ReportFile(Proof proof, IReadOnlyList<KeyValuePair<string, string>> parts, IReadOnlyList<string> changed)
    {
        Proof = proof;
        Parts = parts;
        Changed = changed;
    }

    /// <summary>What the report says about itself.</summary>
    public Proof Proof { get; }

    /// <summary>Name and text of the parts; a part whose ends cannot be told any more is joined to the one before it.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Parts { get; }

    /// <summary>Names of the parts that are not as they were made; empty when the file holds together.</summary>
    public IReadOnlyList<string> Changed { get; }

    /// <summary>Text of a part; empty when there is none of this name.</summary>
    internal string Part(string name) => Parts.FirstOrDefault(p => p.Key == name).Value ?? "";

    /// <summary>Reads a report from a file.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="NotebookException">There is no such file, or it is no report that can be verified.</exception>
    public static ReportFile Read(string path)
    {
        var file = new FileInfo(path);
        if (Directory.Exists(path))
            throw new NotebookException(Fault.Usage, $"'{path}' is a folder; name the report in it, a file that ends in .html.");
        if (!file.Exists)
            throw new NotebookException(Fault.Usage, $"There is no report '{path}'.");
        if (file.Length > LargestBytes)
            throw new NotebookException(Fault.Data, $"'{file.Name}' is larger than 64 MB: no report of this program is.");
        try
        {
            return Parse(new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(File.ReadAllBytes(path)), file.Name);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new NotebookException(Fault.Data, $"'{path}' cannot be read: {e.Message}", e);
        }
        catch (DecoderFallbackException e)
        {
            throw new NotebookException(Fault.Data, $"'{file.Name}' is not UTF-8 text: it is damaged or no report of this program.", e);
        }
    }

    /// <summary>Reads a report from its text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">What to call it in messages.</param>
    /// <exception cref="NotebookException">It is no report that can be verified.</exception>
    public static ReportFile Parse(string text, string name)
    {
        // What carries a file from one machine to another may change line ends and mark the encoding.
        text = text.TrimStart('\uFEFF').ReplaceLineEndings("\n");
        var begin = text.LastIndexOf(ProofScript.Begin, StringComparison.Ordinal);
        if (begin < 0)
            throw new NotebookException(Fault.Data, WithoutProof(text, name));
        var end = text.IndexOf(ProofScript.End, begin, StringComparison.Ordinal);
        if (end < 0)
            throw new NotebookException(Fault.Data, $"'{name}' ends in the middle of its proof: the file was cut off. Ask for it again.");
        return Cut(text[..begin], ReadProof(text[(begin + ProofScript.Begin.Length)..end], name), text[(end + ProofScript.End.Length)..], name);
    }

    private static ReportFile Cut(string before, Proof proof, string after, string name)
    {
        int from = before.LastIndexOf(ProvenanceFoot.Opens, StringComparison.Ordinal), to = before.LastIndexOf(ProvenanceFoot.Closes, StringComparison.Ordinal);
        var foot = proof.Parts.ToList().FindIndex(p => p.Name == PartNames.FootEnd);
        if (foot < 0)
            throw new NotebookException(Fault.Data, $"The proof in '{name}' tells of no foot: it was changed by hand.");
        var changed = new List<string>();
        if (from < 0 || to < from)
            (from, to) = (before.Length - ProvenanceFoot.Opens.Length, before.Length);
        else if (!ProvenanceFoot.IsTime(before[(from + ProvenanceFoot.Opens.Length)..to]))
            changed.Add(PartNames.Foot);
        from = Math.Max(0, from);
        PartCutter[] cutters =
        [
            new(before[..Math.Min(before.Length, from + ProvenanceFoot.Opens.Length)], [.. proof.Parts.Take(foot)]),
            new(before[to..], [proof.Parts[foot]]),
            new(after, [.. proof.Parts.Skip(foot + 1)]),
        ];
        return new ReportFile(proof, [.. cutters.SelectMany(c => c.Parts)], [.. changed.Concat(cutters.SelectMany(c => c.Changed)).Distinct(StringComparer.Ordinal)]);
    }

    private static Proof ReadProof(string json, string name)
    {
        try
        {
            return ProofJson.Read(json);
        }
        catch (FormatException e)
        {
            throw new NotebookException(Fault.Data, $"The proof in '{name}' cannot be read: {e.Message}. It was damaged or changed, or made by another version.", e);
        }
    }

    private static string WithoutProof(string text, string name)
        => text.Contains(ProvenanceFoot.Opens, StringComparison.Ordinal)
            ? $"'{name}' carries no proof: an earlier version of this program made it, or the file was cut off. Run its notebook again to get one that can be verified."
            : $"'{name}' is no report of this program.";
}
