using Analytics.Runner.Proofs;

namespace Analytics.Runner.Pages;

/// <summary>The proof as an element of the page. It is data: no policy has to let it run.</summary>
internal static class ProofScript
{
    public const string Begin = "<script type=\"application/json\" id=\"proof\">";
    public const string End = "</script>\n";

    public static string Make(PageModel model, PageText page, IEnumerable<ProofPart> partsAfter) => Begin + ProofJson.Write(new Proof
    {
        Notebook = model.Notebook,
        NotebookSha256 = model.Provenance.NotebookSha256,
        Library = model.Provenance.Library,
        Ending = model.Provenance.Ending,
        Settings = [.. model.Provenance.Settings.Select(s => SettingText.ForProof(s, model.Provenance.Given.Contains(s.Name)))],
        Inputs = [.. page.Values.SelectMany(v => v.Value).OfType<PageTable>().SelectMany(Inputs)],
        With = [.. model.Provenance.Inserted.Select(f => new ProofInput(f.Name, f.Sha256))],
        Parts = [.. page.Parts, .. partsAfter],
        Values = page.Values,
    }) + End;

    // A table that has a column of digests lists the files behind the results.
    private static IEnumerable<ProofInput> Inputs(PageTable table)
    {
        var digest = table.Heads.ToList().IndexOf(ProofInput.DigestHead);
        return digest < 1 ? [] : table.Rows.Where(r => r.Count > digest).Select(r => new ProofInput(r[0], IsDigest(r[digest]) ? r[digest] : ""));
    }

    private static bool IsDigest(string text) => text.Length == 64 && text.All(char.IsAsciiHexDigitLower);
}
