using System.Globalization;
using System.Text;
using Analytics.Runner.Proofs;
using Analytics.Runner.Running;

namespace Analytics.Cli.Verifying;

/// <summary>Verifies one report and says what came of it; the last line is the verdict.</summary>
/// <param name="screen">Where it is said.</param>
/// <param name="name">What the report is called.</param>
/// <param name="report">The report.</param>
internal sealed class Verification(Screen screen, string name, ReportFile report)
{
    private const int MostShown = 20;

    private Proof Proof => report.Proof;

    /// <summary>Verifies it.</summary>
    /// <param name="options">What to recompute it from; null checks the file only.</param>
    /// <param name="cancellation">Stops the recomputation.</param>
    /// <returns>The exit code: 0 only for the same inputs and the same numbers.</returns>
    public async Task<int> RunAsync(VerifyOptions? options, CancellationToken cancellation)
    {
        var settings = Proof.Settings.Select(s => $"{s.Name} = {s.Value}");
        Say($"{name}: {string.Join("; ", settings.Prepend($"{Proof.Notebook}, {Proof.Library}"))}");
        if (Proof.Ending != "complete")
            Say($"The run that made it ended early ({Proof.Ending}).");
        SayWhetherItHoldsTogether();
        if (options is null)
        {
            return Verdict(report.Changed.Count > 0 ? Changed(report.Changed.Select(PartInWords))
                : "the report is as it was made; its numbers were not recomputed, for that say where the season is with --season DIR");
        }

        var run = await Recomputing.RunAsync(screen, Proof, options, cancellation).ConfigureAwait(false);
        if (run.Ending == RunEnding.TimedOut)
        {
            Verdict("the numbers could not be recomputed: the notebook took too long");
            return ExitCode.TimeOut;
        }

        var again = ReportFile.Parse(Encoding.UTF8.GetString(run.Content.Page), name);
        SayWhatItWasMadeWith(again.Proof);
        var reached = run.Ending == RunEnding.Complete || again.Proof.Inputs.Count > 0;
        var inputs = reached ? InputComparison.Of(Proof, again.Proof) : InputComparison.Of(Proof, again.Proof, options.Season);
        Say(inputs is { IsSame: true, Count: 0 } ? "Inputs: the report lists no files." : inputs.IsSame ? $"Inputs: {Count(inputs.Count, "file")}, all as they were." : $"Inputs changed: {inputs.InWords}.");
        if (run.Failure is { } failure && Proof.Ending == "complete")
        {
            Say($"The notebook stopped at {run.FailedCell}: {failure.Message}");
            return Verdict(inputs.IsSame ? "the numbers could not be recomputed: the notebook stopped" : $"inputs changed: {inputs.InWords}; the numbers could not be recomputed");
        }

        var comparison = WithoutDigestsOf(inputs, ReportComparison.Of(report, again));
        SayDifferences(comparison);
        return Verdict(inputs, comparison, again.Proof.Library == Proof.Library);
    }

    private int Verdict(InputComparison inputs, ReportComparison comparison, bool sameLibrary)
    {
        var values = comparison.Values.Count;
        if (report.Changed.Count > 0)
            return Verdict(Changed(report.Changed.Select(PartInWords)));
        if (comparison.Frame.Count > 0)
            return Verdict(Changed(comparison.Frame.Select(f => f.Place)));
        if (!inputs.IsSame)
            return Verdict($"inputs changed: {inputs.InWords}; {(values == 0 ? "the numbers are the same" : $"{Count(values, "place")} of the report {(values == 1 ? "differs" : "differ")}")}");
        if (values > 0)
            return Verdict($"numbers differ: {Count(values, "place")}, first {comparison.Values[0].Place}");
        Say("same inputs, same numbers" + (sameLibrary ? "" : "; drawings, styles and scripts were not compared, since another version of the library made them"));
        return ExitCode.Fine;
    }

    private int Verdict(string words)
    {
        Say(words);
        return ExitCode.DataOrCell;
    }

    // That a changed file has another digest was said already, and is no number of the report.
    private static ReportComparison WithoutDigestsOf(InputComparison inputs, ReportComparison comparison) => comparison with
    {
        Values = [.. comparison.Values.Where(v => v.Column != ProofInput.DigestHead || !inputs.Changed.Any(f => v.Row.StartsWith(f, StringComparison.Ordinal)))],
    };

    private void SayWhetherItHoldsTogether()
    {
        if (report.Changed.Count == 0)
        {
            Say("File: as it was made.");
            return;
        }

        Say($"File: changed after it was made, in {string.Join(", ", report.Changed.Select(PartInWords).Distinct())}.");
        SayAll(ReportComparison.WithItself(report), "it was made with");
    }

    private void SayWhatItWasMadeWith(Proof again)
    {
        if (again.Library != Proof.Library)
            Say($"Library: the report was made with {Proof.Library}, this is {again.Library}. Looks may differ; the numbers are compared.");
        if (again.NotebookSha256 != Proof.NotebookSha256)
            Say($"Notebook: {again.Notebook} is not the one the report was made with (SHA-256 {again.NotebookSha256[..12]}…, then {Short(Proof.NotebookSha256)}). The numbers are compared.");
    }

    private void SayDifferences(ReportComparison comparison)
    {
        if (comparison.Values.Count == 0)
            Say($"Numbers: {Count(comparison.CellsCompared, "table cell")} and {Count(comparison.LinesCompared, "line")} of text recomputed, all the same.");
        else
            Say($"Numbers: what is recomputed now is not what the report says, in {Count(comparison.Values.Count, "place")}:");
        SayAll([.. comparison.Values, .. comparison.Frame], "recomputed");
    }

    private void SayAll(IReadOnlyList<Difference> differences, string other)
    {
        foreach (var difference in differences.Take(MostShown))
            Say($"  {Line(difference.Place)}: report says {Quoted(difference.Reported)}, {other} {Quoted(difference.Expected)}");
        if (differences.Count > MostShown)
            Say($"  and {Count(differences.Count - MostShown, "more place")}");
    }

    private string PartInWords(string part)
        => PartNames.IsResult(part) ? Proof.Values.FirstOrDefault(v => v.Key == part).Value?.OfType<PageHeading>().FirstOrDefault() is { } heading ? $"'{heading.Text}'" : part : PartNames.InWords(part);

    private static string Changed(IEnumerable<string> places) => $"the report was changed after it was made: {string.Join(", ", places.Distinct())}";

    private static string Count(int count, string what)
        => string.Create(CultureInfo.InvariantCulture, $"{count:#,0} {what}{(count == 1 ? "" : "s")}");

    private static string Short(string digest) => digest.Length > 12 ? digest[..12] + "…" : digest;

    private static string Quoted(string text) => text.Length == 0 ? "nothing" : $"'{Line(text)}'";

    // What a report says is written by whoever changed it last: nothing in it may steer a terminal.
    private void Say(string text) => screen.Out.WriteLine(Line(text));

    private static string Line(string text) => PlainLine.Whole(text.ReplaceLineEndings(" "));
}
