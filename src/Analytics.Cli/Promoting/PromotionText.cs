using System.Globalization;

namespace Analytics.Cli.Promoting;

/// <summary>What the command says when it has written.</summary>
internal static class PromotionText
{
    private const int FailuresShown = 5;

    public static void Written(TextWriter to, PromotionPlan plan)
    {
        to.WriteLine($"{plan.Name.Id} is now Analytics.Metrics.{plan.Folder}.{plan.Name.Class}:");
        foreach (var file in plan.Files) to.WriteLine($"  {(file.IsNew ? "new    " : "changed")}  {file.Path}");
        var (all, rows, outside) = plan.Values;
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"It has {all} {(all == 1 ? "value" : "values")} on {Clone.FrozenSeason}; {rows} of them are rows of its test."));
        if (outside > 0) to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{outside} of {all} lie outside what is to be believed: look at the range again."));
        if (plan.IsFormulaCode) to.WriteLine("Its formula is told as the line of C#; a reader wants words with units: write them into Formula of the new file, or promote with --formula.");
        to.WriteLine("To take all of it back:");
        to.WriteLine("  " + plan.Undo);
    }

    public static void NotBuilt(TextWriter to, IReadOnlyList<string> errors)
    {
        to.WriteLine("The clone does not build with it, or its tests did not run:");
        foreach (var error in errors) to.WriteLine("  " + error);
        to.WriteLine("Mend the new files, or take all of it back with the line above.");
    }

    public static void Tested(TextWriter to, PromotionPlan plan, TestResults results)
    {
        var wrong = results.Failed.Where(f => !f.IsBlank).ToList();
        var blank = results.Failed.Count - wrong.Count;
        to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Tests of the metric and the catalogue: {results.Passed} passed, {results.Failed.Count} failed{(blank > 0 ? $", of these {blank} blank" : "")}."));
        foreach (var test in wrong.Take(FailuresShown)) to.WriteLine($"  {PlainLine.Whole(test.Name)}: {PlainLine.Whole(test.Message.Split('\n')[0])}");
        if (wrong.Count > FailuresShown) to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  and {wrong.Count - FailuresShown} more"));
        if (wrong.Count > 0) to.WriteLine($"Mend the formula in {plan.Files[0].Path} until these pass, or take all of it back with the line above, mend the sketch and promote again.");
        if (blank > 0)
        {
            to.WriteLine($"A blank check fails on purpose: in {plan.Files[1].Path} put a figure from outside in its place (PublishedCheck.Filled),");
            to.WriteLine($"or say why there is none (PublishedCheck.Waived).{(wrong.Count == 0 ? " Nothing else is missing for that." : "")}");
        }

        if (wrong.Count == 0) to.WriteLine("Next: read the new files, take the sketch out of its notebook, run all tests (bash tests/run.sh), commit. See docs/promoting.md.");
    }
}
