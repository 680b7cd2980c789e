using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Where no plan keeps all rules: which rules clash, and what giving way on each would bring.</summary>
internal static class ClashBlock
{
    public static Block Of(WeekContext week)
    {
        var clashes = week.Answer.Clashes;
        if (clashes.Count == 0) return new Together();
        return new Section("Rules that clash", clashes.Count == 1 ? "Giving way on any one of them gives a plan; nothing else stands in the way."
                : "Each table is a set of rules that cannot all be kept; without any one of its rules the others of the table can. Where that gives no plan alone, another table says why.",
            clashes.Select((c, i) => DataTable.Of(clashes.Count == 1 ? "The clash" : FormattableString.Invariant($"Clash {i + 1} of {clashes.Count}"), c.Relaxations, t => t
                .Text("Rule", r => new Cell(Words.Capital(r.Rule.Text), week.Rules[r.Rule.RuleId].Label))
                .Text("Without it", r => new Cell(Words.Capital(r.Text), "", r.GivesPlan ? Tone.Gain : Tone.Muted))
                .Text("Where to change it", r => Where(r.Rule.RuleId)))));
    }

    private static string Where(string rule) => rule switch
    {
        Planning.Rules.RuleIds.SessionMinutes => "minutes in training/calendar.csv",
        Planning.Rules.RuleIds.StationPlaces => "training/rooms.csv, or start times in training/calendar.csv",
        Planning.Rules.RuleIds.DayDemands => "kind in training/calendar.csv, or training/day-kinds.csv",
        Planning.Rules.RuleIds.Restrictions => "training/restrictions.csv, by whoever set it",
        Planning.Rules.RuleIds.Kept => "keep in training/plan.csv",
        _ => "training/rules.csv",
    };
}
