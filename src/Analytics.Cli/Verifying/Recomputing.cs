using Analytics.Cli.Commands;
using Analytics.Cli.Progress;
using Analytics.Cli.Sketching;
using Analytics.Runner;
using Analytics.Runner.Files;
using Analytics.Runner.Proofs;
using Analytics.Runner.Running;
using Analytics.Runner.Sources;

namespace Analytics.Cli.Verifying;

/// <summary>Makes a report again from what its proof tells and the folders at hand.</summary>
internal static class Recomputing
{
    private const string Season = "season";
    private const string Earlier = "earlier";

    public static async Task<NotebookRun> RunAsync(Screen screen, Proof proof, VerifyOptions options, CancellationToken cancellation)
    {
        var notebook = options.Notebook ?? Find(proof.Notebook);
        var request = new RunRequest
        {
            Notebook = notebook,
            Settings = Settings(proof, notebook, options),
            Inserted = Inserted(proof, options.With),
            OutFolder = Path.GetTempPath(),
            Library = LibraryName.Text,
            Charts = EarlyStart.Charts,
        };
        using var progress = RunProgress.For(screen, Path.GetFileName(notebook));
        return await new NotebookRunner(EarlyStart.Kernel, new ResultFiles(), TimeProvider.System)
            .MakeAsync(request, progress, cancellation: cancellation).ConfigureAwait(false);
    }

    // Code in a report is for reading; what runs is the file at hand, which is then held against the report's digest.
    private static InsertedCode? Inserted(Proof proof, IReadOnlyList<string> files)
    {
        var inserted = SketchCells.From(files);
        var given = inserted?.Files.Select(f => PlainLine.Of(f.Name)).ToList() ?? [];
        // Names in a proof are of unknown origin.
        var wanted = proof.With.Select(w => PlainLine.Of(w.File)).ToList();
        if (wanted.Except(given, StringComparer.Ordinal).ToList() is [var missing, ..])
            throw new NotebookException(Fault.Usage, $"The report was made with the metrics on trial of '{missing}'. Give that file again: --with {missing}");
        if (given.Except(wanted, StringComparer.Ordinal).ToList() is [var more, ..])
            throw new NotebookException(Fault.Usage, $"The report was made {(wanted.Count == 0 ? "without metrics on trial" : $"with {string.Join(", ", wanted)} only")}. Leave out --with {more}.");
        return given.SequenceEqual(wanted, StringComparer.Ordinal) ? inserted
            : throw new NotebookException(Fault.Usage, $"The report was made with the files in this order: {string.Join(", ", wanted)}. Give --with in this order too.");
    }

    private static string Find(string name)
    {
        // The name comes from a file of unknown origin: it must not lead anywhere else.
        if (name != Path.GetFileName(name) || !name.EndsWith(".ipynb", StringComparison.Ordinal))
            throw new NotebookException(Fault.Data, "The proof in the report names no notebook: it was changed by hand. Name the notebook with --notebook.");
        var places = new[] { Path.Combine("notebooks", name), name };
        return Array.Find(places, File.Exists)
            ?? throw new NotebookException(Fault.Usage, $"There is no 'notebooks/{name}' here to recompute the report with. Say where it is with --notebook.");
    }

    private static List<KeyValuePair<string, string>> Settings(Proof proof, string notebook, VerifyOptions options)
    {
        var given = GivenSettings.From(notebook, new RunOptions { Season = Has(proof, Season) ? options.Season : null, Earlier = Has(proof, Earlier) ? options.Earlier : [], Set = options.Set }).ToList();
        if (options.Earlier.Count > 0 && !Has(proof, Earlier))
            throw new NotebookException(Fault.Usage, $"The report was made with one season: '{proof.Notebook}' was run without earlier ones. Leave out --earlier.");
        foreach (var setting in proof.Settings.Where(s => s.Given && !given.Exists(g => g.Key == s.Name)))
        {
            given.Add(!setting.IsPath
                ? new(setting.Name, setting.Value)
                : throw new NotebookException(Fault.Usage, setting.Name == Earlier
                    ? $"The report also rests on earlier seasons, in folders called '{setting.Value}'. Say where they are with --earlier, oldest first."
                    : $"The report was made with {setting.Name} = a path that ends in '{setting.Value}', and reports do not tell whole paths. Give it with --set {setting.Name}=PATH."));
        }

        return given;
    }

    private static bool Has(Proof proof, string setting) => proof.Settings.Any(s => s.Name == setting);
}
