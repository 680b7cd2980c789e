using System.Globalization;
using Analytics.Acceptance.Programs;

namespace Analytics.Acceptance.Reports;

/// <summary>A report made by the built program, with all it said on the way.</summary>
internal sealed record MadeReport(int ExitCode, string Said, string Page, string Notebook)
{
    public string PageUrl => new Uri(Page).AbsoluteUri;

    /// <summary>Runs the program on a notebook in a process of its own.</summary>
    public static MadeReport Make(string notebook, params string[] more)
    {
        var folder = Directory.CreateTempSubdirectory("analytics-report-").FullName;
        var (code, output, error) = Running.Run("dotnet", [Repository.Program, "run", notebook, "--out", folder, .. more]);
        var name = Path.GetFileNameWithoutExtension(notebook);
        var report = new MadeReport(code, output + error, Path.Combine(folder, name + ".html"), Path.Combine(folder, name + ".ipynb"));
        return File.Exists(report.Page)
            ? report
            : throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"No report; exit code {code}.\n{report.Said}"));
    }
}
