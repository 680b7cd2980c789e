using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.TestingDay;

/// <summary>How the numbers came about: the rule, each measure with formula, error and sources.</summary>
internal static class MethodsBlock
{
    public static Block Of(DayContext day)
    {
        var used = day.Metrics.Where(m => (m.Quality != Analytics.Metrics.Catalogue.Quality.Body || m.IsTrial) && day.Standing(m).Day.Values.Count > 0).ToList();
        var table = DataTable.Of("Measures of this report", used, t => t
            .Text("Measure", m => new Cell(m.Label, m.Meaning))
            .Text("Formula", m => m.Formula)
            .Text("Value of the day", m => m.Rule == Analytics.Metrics.Catalogue.TrialRule.Best ? "best attempt" : "mean of the attempts")
            .Text("Typical error", m => new Cell(ErrorText.Of(day.Standing(m).Reliability, day.Unit(m)), day.Standing(m).Reliability.Basis))
            .Text("Sources", Words.Sources));
        return new Section("How the numbers came about", "", new Folded("Methods and sources",
            new Definitions(
                ("Verdicts", day.Profile.Rule.Statement),
                ("Interval of a change", "Difference plus or minus Student's t times \u221A2 times the typical error of the test, with the degrees of freedom of that error; where a maximum was estimated from repetitions, the error of the equation is added."),
                ("Typical error", "From the season's own retest days where there are enough players; else from a published study, named; else nothing is judged."),
                ("Too small to matter", $"A change under {day.Profile.WorthwhileShare.ToString(System.Globalization.CultureInfo.InvariantCulture)} of the spread between players of the same group, test error taken off, or a figure the coach has set."),
                ("Standing and needs", "A player is compared with the middle of his own group. Small groups are pulled toward the squad, a player's distance toward zero, each by its stated reliability."),
                ("Not a verdict", "Beating the smallest worthwhile change alone is never called a real change: in a test with an ICC of .90, 65\u2009% of the players who have not changed at all would do so."),
                ("How often this is wrong", MeasuredRates.Sentence(SquadAnswer.Tested(day), [.. used.Where(m => !m.IsTrial).Select(m => day.Standing(m).Reliability)]))),
            table,
            new Note("Source keys are listed in the project's references.")));
    }
}
