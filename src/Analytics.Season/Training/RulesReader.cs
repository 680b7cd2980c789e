using Analytics.Planning.Rules;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Reads <c>rules.csv</c>: rules of planning that the coach has changed. A rule without a row stays as it is.</summary>
internal static class RulesReader
{
    private static readonly Column Rule = new("rule", needed: true);
    // The range depends on the rule and is looked at once that is known.
    private static readonly NumberColumn Value = new("value", -1e9, 1e9);
    private static readonly Column Unit = new("unit");
    private static readonly Column Handling = new("handling");
    private static readonly Column Source = new("source");

    public static readonly IReadOnlyList<Column> Columns = [Rule, Value, Unit, Handling, Source];

    /// <summary>What stands as source where a row names none.</summary>
    public const string Coach = "the coach";

    /// <summary>The rules of the season; null when no row could be kept.</summary>
    public static PlanRules? Read(SeasonIntake intake, IReadOnlyList<Table> tables)
    {
        var (changed, seen) = (new List<PlanRule>(), new SeenRows());
        var ids = PlanRules.Standard.All.Select(r => r.Id).ToList();
        foreach (var table in tables)
        {
            intake.ReadRows(table, Columns, withGates: false, (row, tally) =>
            {
                var id = Words.Normal(row.NeedText(Rule, "rule"));
                if (id.Length is 0) return;
                if (!ids.Contains(id))
                {
                    row.Unknown(Rule, "rule", row.Text(Rule), ids, $"Rules are those of the kit: {string.Join(", ", ids)}.");
                    return;
                }

                seen.Refuse(row, table, Rule, id, $"the rule '{id}'", "Keep one of the two rows.");
                var rule = Make(row, PlanRules.Standard[id], RuleLimits.Of(id));
                if (row.Faults.Count > 0) return;
                seen.Add(row, table, id);
                changed.Add(rule);
                tally.CountKept();
            });
        }

        if (changed.Count is 0) return null;
        var rules = PlanRules.With(changed);
        if (rules.Value(RuleIds.TestExpiresAfter) <= rules.Value(RuleIds.TestOldAfter))
            intake.Note(tables[0].Path, $"A test expires after {CellText.Number(rules.Value(RuleIds.TestExpiresAfter))} days, not later than it counts as old ({CellText.Number(rules.Value(RuleIds.TestOldAfter))} days), so no test is ever told as old; check test_old_after and test_expires_after.");
        return rules;
    }

    private static PlanRule Make(RowCells row, PlanRule standard, RuleLimits limits)
    {
        var value = ValueOf(row, standard, limits);
        var handling = row.Known(Handling, TrainingWords.Handlings) ?? standard.Handling;
        var why = handling == RuleHandling.Refuse ? "" : limits.Fixed.Length > 0 ? limits.Fixed : handling == RuleHandling.Off ? limits.NeverOff : "";
        if (why.Length > 0)
            row.Wrong(Handling, $"the rule {standard.Id} cannot be {(handling == RuleHandling.Off ? "switched off" : "flagged")}: {why.Split('|')[0]}", why.Split('|')[1]);
        var source = row.Free(Source, "source");
        return standard with { Value = value, Handling = handling, Source = source.Length > 0 ? source : Coach };
    }

    private static double? ValueOf(RowCells row, PlanRule standard, RuleLimits limits)
    {
        var unit = row.Text(Unit);
        if (row.Text(Value).Length is 0)
        {
            if (unit.Length > 0 && Factor(unit, standard.Unit) is null) Disagrees(row, unit, standard);
            return standard.Value;
        }

        if (standard.Value is null)
        {
            row.Wrong(Value, $"the rule {standard.Id} has no figure", "Empty the cell; only the handling of this rule can be changed.");
            return null;
        }

        if (row.Number(Value) is not { } number) return null;
        if (Factor(unit, standard.Unit) is not { } factor)
        {
            Disagrees(row, unit, standard);
            return null;
        }

        if (number * factor >= limits.Low && number * factor <= limits.High) return number * factor;
        row.Wrong(Value, $"{CellText.Number(number)} {CellText.Show(unit)} is outside what {standard.Id} allows, {CellText.Limit(limits.Low / factor, isLow: true)} to {CellText.Limit(limits.High / factor, isLow: false)} {CellText.Show(unit)}", $"The kit's own figure is {CellText.Number(standard.Value.Value)} {standard.Unit}; correct the value.");
        return null;
    }

    /// <summary>Into the unit of the rule; null when the unit is another. Masses may be written in lb too.</summary>
    private static double? Factor(string unit, string standard)
        => string.Equals(unit, standard, StringComparison.OrdinalIgnoreCase) ? 1
            : standard == "kg" && string.Equals(unit, "lb", StringComparison.OrdinalIgnoreCase) ? Mass.FromPounds(1).Kilograms : null;

    private static void Disagrees(RowCells row, string unit, PlanRule standard)
        => row.Wrong(Unit, unit.Length is 0 ? $"the figure of {standard.Id} has no unit" : $"the unit '{CellText.Show(unit)}' is not that of {standard.Id}",
            standard.Unit.Length is 0 ? "This rule has no figure and no unit; empty the cell." : $"Write the value in {standard.Unit}{(standard.Unit == "kg" ? " or lb" : "")}, and {standard.Unit} as unit.");
}
