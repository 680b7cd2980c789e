using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Rules;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>How the plan came about, the rules it keeps, and the cautions that go with it.</summary>
internal static class WeekMethods
{
    public static Block Rules(WeekContext week) => new Section("The rules", "", new Folded($"{week.Rules.All.Count} rules with figure, handling and source",
        DataTable.Of("Rules of this week", week.Rules.All, t => t
            .Text("Rule", r => Words.Capital(r.Label))
            .Numeric("Figure", "", r => new Cell(r.Value is { } value ? Figures.Plain(value, value % 1 == 0 ? 0 : 1, r.Unit) : null))
            .Text("Where it is not kept", r => r.Handling switch { RuleHandling.Refuse => "no such plan", RuleHandling.Flag => "flagged", _ => "not looked at" })
            .Text("Source", r => r.Source)),
        new Note("Figures and handling are changed in training/rules.csv. A coach's choices are kept in training/plan.csv.")));

    public static Block Methods() => new Section("How the plan came about", "", new Folded("Methods and sources",
        new Definitions(
            ("Needs", "The probability that a player's true value lies below the middle of his group by more than too small to matter, from his latest test of the quality with its error; a second test that disagrees leaves it open."),
            ("Balanced default", "Whoever has no named need does the own work of his group, which goes round the qualities the week's days have."),
            ("The plan", "A constraint model solved by CP-SAT of Google OR-Tools 9.15: choices of the coach stay, then probable needs are served, then variety, then little equipment change. One thread, a fixed seed and a fixed amount of work: the same input gives the same plan."),
            ("No plan", "The rules named clash and are minimal: without any one of them the others can be kept."),
            ("Loads", "Per cent of the latest 1RM, or of the lower side of its 95\u2009% range where the estimate is doubtful, wide, old or has no known error; rounded down to bars and plates of the room; nothing where nothing was tested."),
            ("Dose", "Repetitions of weightlifting movements by zone [hristov2005], ground contacts by experience and body mass [baechle2008], hard sets and minutes (common practice, no source), added up again from the sheets."),
            ("The log", "Two logged sessions that agree move a load by the step of the rule; one reading never does."),
            ("Time", "Warm-up, sets, rests, and a change to each exercise; what sharing a place costs beyond the rests is not in it.")),
        new Note("Details and check values: docs/methods/planning.md. Source keys are listed in the project's references.")));

    public static Block Cautions(WeekContext week) => new Cautions(
    [
        "This sheet advises a qualified coach. Local rules, medical staff and what you see in front of you come before it.",
        "Nobody who is sore, ill, dizzy, concussed or returning trains by it without medical clearance; suspected concussion means out and to medical staff.",
        "Warm up before every lift; trained spotters and safety bars for bench press and squat, never a spotter at cleans, snatches and jerks; collars on.",
        "Jumps on a dry, firm floor; stop when landings get loud or the knees fall in. Heavy players land less.",
        "Loads from an estimate are a range: take weight off when the good repetitions are not there. Under 18: only with close, qualified supervision.",
        .. week.Rules.All.Where(r => r.Handling != RuleHandling.Refuse).Select(r => $"Rule {(r.Handling == RuleHandling.Off ? "switched off" : "only flagged")} in this season: {r.Label}."),
    ]);
}
