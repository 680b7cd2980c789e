using System.Text.RegularExpressions;
using Analytics.Runner.Pages;
using Analytics.Runner.Running;

namespace Analytics.Runner.Proofs;

/// <summary>
/// Compares what stands round the results. With the same library it has to be the same to the character; with another
/// one only the title and the foot say something about the numbers.
/// </summary>
internal static partial class FrameComparison
{
    public static IEnumerable<Difference> Of(ReportFile report, ReportFile again, bool sameLibrary)
    {
        var sameNotebook = report.Proof.NotebookSha256 == again.Proof.NotebookSha256;
        var sameCode = sameNotebook && report.Proof.With.SequenceEqual(again.Proof.With);
        if (Title(report.Part(PartNames.Head)) is var title && title != Title(again.Part(PartNames.Head)))
            yield return Difference.InText("title of the page", title, Title(again.Part(PartNames.Head)));
        else if (sameLibrary && report.Part(PartNames.Head) != again.Part(PartNames.Head))
            yield return Difference.InText(PartNames.InWords(PartNames.Head), report.Part(PartNames.Head), again.Part(PartNames.Head));
        if (sameCode && sameLibrary && Code(report.Part(PartNames.Code)) is var code && code != Code(again.Part(PartNames.Code)))
            yield return Difference.InText(PartNames.InWords(PartNames.Code), code, Code(again.Part(PartNames.Code)));
        foreach (var difference in Foot(report.Proof, report.Part(PartNames.Foot), sameNotebook ? again.Part(PartNames.Foot) : ""))
            yield return difference;
        if (!sameLibrary)
            yield break;
        if (report.Part(PartNames.FootEnd) != again.Part(PartNames.FootEnd))
            yield return Difference.InText(PartNames.InWords(PartNames.FootEnd), report.Part(PartNames.FootEnd), again.Part(PartNames.FootEnd));
        if (report.Part(PartNames.Script) != again.Part(PartNames.Script))
            yield return Difference.InText(PartNames.InWords(PartNames.Script), report.Part(PartNames.Script), again.Part(PartNames.Script));
        // Packing may differ from machine to machine; what is packed may not.
        string one = report.Part(PartNames.Charts), other = again.Part(PartNames.Charts);
        if (Bare(one) != Bare(other) || (one != other && PageCharts.Library(one) != PageCharts.Library(other)))
            yield return new Difference("the chart library", "another one", "the one this program ships");
    }

    /// <summary>The foot has to tell what the proof tells; the proof's settings are those of the run made again.</summary>
    public static IEnumerable<Difference> Foot(Proof proof, string reported, string again)
    {
        IReadOnlyList<string> said = Lines(reported), should = Lines(again);
        (string Term, string Text)[] known = [("Notebook", $"{proof.Notebook}, SHA-256 {proof.NotebookSha256}"), ("Library", proof.Library), (ProvenanceFoot.CodeTerm, proof.With.Count == 0 ? "" : ProvenanceFoot.CodeText(proof.With.Select(f => (f.File, f.Sha256))))];
        foreach (var (term, text) in known)
        {
            if (After(said, term) is var found && found != text)
                yield return Difference.InText($"foot of the page, {term}", found, text);
        }

        if (should.Count > 0 && Settings(said, proof) is var settings && settings != Settings(should, proof))
            yield return Difference.InText("foot of the page, Settings", settings, Settings(should, proof));
    }

    private static IReadOnlyList<string> Lines(string foot) => [.. ContentReader.Read(foot).OfType<PageLine>().Select(l => l.Text)];

    private static string After(IReadOnlyList<string> lines, string term)
        => lines.SkipWhile(l => l != term).Skip(1).FirstOrDefault() ?? "";

    // Where a folder lies may differ between the two.
    private static string Settings(IReadOnlyList<string> lines, Proof proof)
        => string.Join("; ", After(lines, "Settings").Split("; ").Where(s => !proof.Settings.Any(p => p.IsPath && s.StartsWith(p.Name + " = ", StringComparison.Ordinal))));

    private static string Title(string head) => TitleText().Match(head).Groups["text"].Value;

    private static string Code(string part) => GivenSettings().Replace(part, "");

    private static string Bare(string charts) => Packed().Replace(charts, "");

    [GeneratedRegex("<title>(?<text>[^<]*)</title>")]
    private static partial Regex TitleText();

    [GeneratedRegex($"<section id=\"code-{CellLog.InjectedAnchor}\".*?</section>\\s*", RegexOptions.Singleline)]
    private static partial Regex GivenSettings();

    [GeneratedRegex("""(?<=<script type="text/plain" id="chart-(?:data|library)">)[^<]*""")]
    private static partial Regex Packed();
}
