using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Plans;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Why there is no plan, and what relaxing each rule would give.</summary>
internal static class ClashBlock
{
    private const string NoPlan = "There is no plan for this week that keeps every rule.";

    /// <summary>What stands at the top.</summary>
    public static ReportBlock Callout(WeekView view)
    {
        var answer = view.Week.Answer;
        // The rules of a clash may name other players.
        if (view.Only is not null) return new Callout(NoPlan, "Your coach has the reasons, and your sessions as soon as there is a plan.");
        if (answer.Undecided is { } why) return new Callout("No plan was found in the time given.", why);
        return new Callout(NoPlan, answer.Clashes.Select(c => $"These cannot all be kept: {string.Join("; ", c.Rules.Select(r => r.Text))}. {Way(c, answer.Clashes.Count)}"));
    }

    /// <summary>Each clash with what taking a rule away would give; empty when there is a plan.</summary>
    public static ReportBlock Of(WeekView view)
    {
        var answer = view.Week.Answer;
        if (answer.Plan is not null || view.Only is not null || answer.Clashes.Count == 0) return new Together();
        var rows = answer.Clashes.SelectMany((clash, i) => clash.Relaxations.Select(r => (Clash: i + 1, Relaxation: r))).ToList();
        return new Section("Which rules clash, and what giving way on one would do",
            "Giving way on one of its rules settles a clash; with several clashes each needs its own. Rules stand in training/rules.csv, sessions in training/calendar.csv; the kit breaks none by itself.",
            DataTable.Of("Rules that clash", rows, t => t
                .Text("Rule", r => r.Relaxation.Rule.Text)
                .Text("Where", r => r.Relaxation.Rule.Subject)
                .Number("Clash", "", 0, r => r.Clash)
                .Text("Without it", r => Words.Capital(r.Relaxation.Text) + ".")));
    }

    private static string Way(RuleClash clash, int clashes)
        => clash.Relaxations.FirstOrDefault(r => r.GivesPlan) is { } way ? $"One way out: {way.Text}." : clashes > 1 ? "Each clash needs its own way out; the list below says which." : "Giving way on one of them alone is not enough.";
}
