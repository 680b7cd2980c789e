using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Planning.Rules;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>All rules, folded, with flags open; and how good the plan is known to be.</summary>
internal static class RulesBlock
{
    public static ReportBlock Of(WeekView view)
    {
        var flags = WeekFlags.Of(view).ToList();
        var rules = view.Week.Training.Rules;
        List<Block> body = [];
        if (flags.Count > 0)
            body.Add(DataTable.Of("Flagged", flags, t => t.Text("Where", f => f.Subject).Text("What", f => f.Text).Text("Rule", f => rules[f.RuleId].Label)));
        if (view.Plan is { Changes.Count: > 0 } plan && view.Only is null) body.Add(new Callout("Changed since the earlier plan of this week", plan.Changes));
        if (view.Plan is not null) body.Add(new Note(Quality(view)));
        body.Add(new Folded(Invariant($"All {rules.All.Count} rules with their figures and sources"), [DataTable.Of("Rules", rules.All, t => t
            .Text("Rule", r => r.Label)
            .Numeric("Figure", "", r => r.Value is { } value ? Invariant($"{value:0.##} {r.Unit}").TrimEnd() : null)
            .Text("Where it is not kept", r => Handling(r.Handling))
            .Text("Source", r => r.Source))]) { ScreenOnly = true });
        var targets = TargetsBlock.Of(view);
        if (targets.Count > 0) body.Add(TargetsBlock.Listed(view, targets));
        return new Section("Rules", "Change figures and handling in training/rules.csv" + (targets.Count > 0 ? ", targets in training/targets.csv." : "."), [.. body]);
    }

    public static string Quality(WeekView view)
    {
        var plan = view.Plan!;
        var quality = plan.Quality;
        var good = quality.Gap < 5e-5 ? "No plan can be better by the stated objective."
            : $"No plan can be more than {(Math.Ceiling(quality.Gap * 1000 - 1e-9) / 10).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)}\u2009% better by the stated objective.";
        return good + (quality.HitClock ? " The search was stopped by the clock, so another run may give another plan." : " The same files give the same plan.")
            + (plan.Changes.Count == 0 && view.Week.Problem.Earlier.Any(e => e.Date >= view.Week.Choice.Monday) ? " Nothing changed since the earlier plan of this week." : "");
    }

    private static string Handling(RuleHandling handling) => handling switch
    {
        RuleHandling.Refuse => "no plan breaks it",
        RuleHandling.Flag => "the plan says so",
        _ => "not looked at",
    };
}
