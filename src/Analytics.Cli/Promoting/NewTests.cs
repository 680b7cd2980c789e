using System.ComponentModel;
using System.Diagnostics;
using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>
/// Builds the tests of the metrics and runs those of a new one and of the catalogue. Nothing else is built: the program that runs just now keeps its files.
/// </summary>
internal static class NewTests
{
    private const int ErrorsShown = 5;

    /// <summary>Builds and tests.</summary>
    /// <returns>How the tests ended; null with the errors when the code does not build or no test ran.</returns>
    /// <exception cref="NotebookException">There is no .NET SDK.</exception>
    public static async Task<(TestResults? Results, IReadOnlyList<string> Errors)> RunAsync(PromotionPlan plan, CancellationToken cancellation)
    {
        var folder = Directory.CreateTempSubdirectory("analytics-promote-");
        try
        {
            var file = Path.Combine(folder.FullName, "results.trx");
            // Build nodes that outlive the build would hold its output open.
            var said = await OutputAsync(plan.Home.Root, cancellation,
                "test", Clone.Tests, "-c", "Release", "--nologo", "-nodeReuse:false", "--filter", Filter(plan.Name), "--logger", "trx;LogFileName=" + file).ConfigureAwait(false);
            if (File.Exists(file) && TestResults.Read(file) is { } results && results.Passed + results.Failed.Count > 0) return (results, []);
            var errors = said.Split('\n').Where(l => l.Contains(": error ", StringComparison.Ordinal)).Select(l => Shortened(l.Trim(), plan.Home.Root)).Distinct().Take(ErrorsShown).ToList();
            return (null, errors.Count > 0 ? errors : ["No test ran. " + PlainLine.Whole(said.Trim().Split('\n')[^1])]);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string Filter(PromotedName name)
        => string.Join('|', new[] { $".{name.TestClass}.", ".MetricCatalogueTests.", ".TestQualityTests.", ".CatalogueDocumentTests.", ".ReferencesTests." }.Select(c => "FullyQualifiedName~" + c));

    // The compiler names the file in full and the project behind.
    private static string Shortened(string line, string root)
    {
        var place = line.Replace(root + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);
        var project = place.LastIndexOf(" [", StringComparison.Ordinal);
        return PlainLine.Whole(project > 0 ? place[..project] : place);
    }

    private static async Task<string> OutputAsync(string folder, CancellationToken cancellation, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", arguments) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1";
        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";
        // A build inside a build would otherwise take over what the outer one has set.
        foreach (var name in start.Environment.Keys.Where(k => k.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase)).ToList()) start.Environment.Remove(name);
        Process process;
        try
        {
            process = Process.Start(start)!;
        }
        catch (Win32Exception e)
        {
            throw new NotebookException(Fault.Data, "The program dotnet was not found, so the new tests could not run. Install the .NET SDK, or leave the tests out with --no-tests.", e);
        }

        using (process)
        {
            try
            {
                var output = process.StandardOutput.ReadToEndAsync(cancellation);
                var error = process.StandardError.ReadToEndAsync(cancellation);
                await process.WaitForExitAsync(cancellation).ConfigureAwait(false);
                return await output.ConfigureAwait(false) + await error.ConfigureAwait(false);
            }
            catch (OperationCanceledException)
            {
                process.Kill(entireProcessTree: true);
                throw;
            }
        }
    }
}
