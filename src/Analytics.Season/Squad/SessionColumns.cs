using Analytics.Season.Columns;
using Analytics.Season.Trials;

namespace Analytics.Season.Squad;

/// <summary>The columns <c>sessions.csv</c> may have: a summary of the session, an exercise of it, or both. Limits are what one session can hold; common practice, no source.</summary>
internal static class SessionColumns
{
    public static readonly Column Date = new("date", needed: true);

    public static readonly Column Focus = new("focus");

    public static readonly NumberColumn Minutes = new("minutes", 1, 600);

    public static readonly NumberColumn Exertion = new("session_rpe", 0, 10);

    public static readonly NumberColumn Contacts = new("jump_contacts", 0, 2000, whole: true);

    public static readonly Column Lift = new("lift");

    public static readonly NumberColumn Sets = new("sets", 1, 50, whole: true);

    public static readonly NumberColumn Repetitions = new("repetitions", 1, 100, whole: true) { Synonyms = ["reps"] };

    public static readonly QuantityColumn Load = new("load", UnitSets.Loads, 0, 1000);

    public static readonly IReadOnlyList<Column> All = [Date, TrialTable.AthleteId, Focus, Minutes, Exertion, Contacts, Lift, Sets, Repetitions, Load, TrialTable.Checked];
}
