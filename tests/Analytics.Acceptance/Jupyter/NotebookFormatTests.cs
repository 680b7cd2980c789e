using Analytics.Acceptance.Programs;
using Analytics.Acceptance.Reports;

namespace Analytics.Acceptance.Jupyter;

/// <summary>Against nbformat's own validator, with its repairs taken as errors.</summary>
public class NotebookFormatTests
{
    [NbformatFact]
    public void CommittedNotebooks_AreValidAndHoldNoOutputs()
    {
        foreach (var notebook in Directory.EnumerateFiles(Path.Combine(Repository.Root, "notebooks"), "*.ipynb"))
            AssertValid(notebook, ", all(not c.get('outputs') and c.get('execution_count') is None for c in n.cells)");
    }

    [NbformatFact]
    public void ExecutedNotebook_IsValid() => AssertValid(ReportSet.Demo.Notebook);

    [NbformatFact]
    public void ExecutedReview_IsValid() => AssertValid(ReportSet.Review.Notebook);

    [NbformatFact]
    public void ExecutedAthletePage_IsValid() => AssertValid(ReportSet.Page.Notebook);

    [NbformatFact]
    public void ExecutedNotebook_OfAFailedRun_IsValid() => AssertValid(ReportSet.Failing.Notebook);

    private static void AssertValid(string notebook, string more = ", True")
    {
        Assert.True(Found.PythonWithNbformat is not null, "No Python with nbformat, and skips are forbidden.");
        var code = $"import sys, warnings; warnings.simplefilter('error'); import json, nbformat; raw = json.load(open(sys.argv[1], encoding='utf-8')); n = nbformat.from_dict(raw); nbformat.validate(n); print(n.nbformat, n.nbformat_minor{more})";
        var (exit, output, error) = Running.Run(Found.PythonWithNbformat, ["-c", code, notebook]);
        Assert.True(exit == 0, notebook + "\n" + error);
        Assert.Equal("4 5 True", output.Trim());
    }
}
