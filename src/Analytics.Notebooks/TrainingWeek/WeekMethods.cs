using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Planning.Weeks;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>How the week came about.</summary>
internal static class WeekMethods
{
    public static ReportBlock Of(WeekView view) => new Section("How the week came about", "", new Folded("Methods and sources",
        new Definitions([
            ("Sessions", $"From {view.Week.Choice.From}. Without a calendar a game within a week makes it in season, one within eight weeks pre-season (our choice, no source)."),
            ("Needs", $"Probability of being behind the middle of the own group by more than too small to matter{(TargetsBlock.Of(view).Count > 0 ? ", or worse than the target the coach has set" : "")}, from the latest tests with their error; the first test of a quality speaks, another may object."),
            ("The plan", "A constraint model solved by CP-SAT of Google OR-Tools: rules are kept, then in this order nothing of an earlier plan changes without need, probable needs are served by own work, the week is varied, little equipment changes. The weights are our choice, no source; see docs/methods/planning.md."),
            ("Loads", "Per cent of the latest 1RM, rounded down to bar and plates. The lower side of its range counts where the estimate is doubtful, wide, old or without a known error; after too long, or after an injury, test first. Limits: our choice. Other exercises: a share of the tested lift, common practice, no source."),
            ("Dose", "Counted from exercises and schemes alone, by another way than the plan: ground contacts and rest [baechle2008], repetitions by zone [hristov2005], hard sets common practice, no source."),
            ("Log", "A load moves only when readings of the last weeks agree, and from where it was planned last; a test after the log speaks instead. What was not logged is not known, never taken as not done."),
        ]),
        DataTable.Of("Kinds of day in this week", view.Week.Problem.Kinds.Where(k => view.Week.Choice.Sessions.Any(s => s.Kind == k.Id)), t => t
            .Text("Kind", k => k.Name)
            .Text("Asks for", k => string.Join("; ", k.Demands.Select(Demand)))
            .Text("Source", k => k.Source)),
        new Note("Source keys are listed in the project's references.")) { ScreenOnly = true });

    private static string Demand(DayDemand demand)
        => $"{demand.Count} of {demand.What}{(demand.Intensity.Length > 0 ? ", " + demand.Intensity : "")}{(demand.IsOwnWork ? ", own work" : "")}";
}
