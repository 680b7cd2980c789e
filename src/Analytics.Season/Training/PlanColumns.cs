using Analytics.Season.Columns;
using Analytics.Season.Trials;

namespace Analytics.Season.Training;

/// <summary>The columns <c>plan.csv</c> may have.</summary>
internal static class PlanColumns
{
    public static readonly Column Date = new("date", needed: true);

    public static readonly Column Start = new("start");

    public static readonly Column Group = new("group");

    public static readonly Column Athlete = new(TrialTable.AthleteId.Name);

    public static readonly Column Exercise = new("exercise", needed: true);

    public static readonly Column Scheme = new("scheme");

    public static readonly Column Part = new("part");

    public static readonly Column Keep = new("keep");

    public static readonly NumberColumn Sets = new("sets", 1, 50, whole: true);

    public static readonly NumberColumn Repetitions = new("repetitions", 1, 100, whole: true) { Synonyms = ["reps"] };

    public static readonly QuantityColumn Load = new("load", UnitSets.Loads, 0, 1000);

    /// <summary>What the exported plan tells its reader; nothing is read from them.</summary>
    public static readonly IReadOnlyList<Column> Told = [new("name"), new("minutes"), new("why"), new("day")];

    public static readonly IReadOnlyList<Column> All = [Date, Start, Group, Athlete, Exercise, Scheme, Part, Keep, Sets, Repetitions, Load, .. Told];
}
