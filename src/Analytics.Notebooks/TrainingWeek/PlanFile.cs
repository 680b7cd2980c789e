using System.Buffers;
using System.Globalization;
using System.Text;
using Analytics.Planning.Loads;
using Analytics.Planning.Plans;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>
/// The plan as rows of <c>training/plan.csv</c>: what groups share, and for every player what he does and puts on. It can be put back into the season, with <c>keep</c> changed
/// where a choice is to stay. A text that a spreadsheet would take for a formula gets an apostrophe before it.
/// </summary>
internal static class PlanFile
{
    private static readonly SearchValues<char> s_quoted = SearchValues.Create(",;\"\n\r\t");

    public const string Name = "training-plan.csv";

    public static string Of(WeekContext week)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"date,day,group,athlete_id,name,exercise,scheme,part,keep,sets,repetitions,load_{week.Bar.Symbol},minutes,why\n");
        foreach (var session in week.Sessions)
        {
            if (!session.IsApart)
                foreach (var item in session.Shared) Row(text, session, session.Group, "", "", item, own: false, null, "shared by the group", week);
            foreach (var id in session.Players)
                foreach (var item in session.For(id))
                {
                    var own = session.Own.FirstOrDefault(o => ReferenceEquals(o.Item, item));
                    var why = own is null ? session.IsApart ? "restricted" : "shared by the group" : own.ForNeed.Contains(id) ? "need" : "group default";
                    Row(text, session, "", id, week.Player(id).Name, item, own is not null, week.Loads(id, item, session.Slot.Date), why, week);
                }
        }

        return text.ToString();
    }

    private static void Row(StringBuilder text, UnitSession session, string group, string id, string name, PlannedItem item, bool own, Prescription? loads, string why, WeekContext week)
    {
        string[] cells =
        [
            session.Slot.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), session.Slot.Date.ToString("dddd", CultureInfo.InvariantCulture), Text(group), Text(id), Text(name),
            Text(item.Exercise.Id), Text(item.Scheme.Id), own ? "own" : "shared", item.IsKept ? "keep" : "planned",
            item.Scheme.Sets.ToString(CultureInfo.InvariantCulture), item.Scheme.Repetitions.ToString(CultureInfo.InvariantCulture),
            loads is { Working.Count: > 0 } ? SheetWords.Number(loads.Working[^1], week.Bar) : "",
            item.Time.Minutes.ToString("0.#", CultureInfo.InvariantCulture), Text(why),
        ];
        text.AppendJoin(',', cells).Append('\n');
    }

    /// <summary>A text cell: quoted where it must be, never a formula.</summary>
    public static string Text(string text)
    {
        if (text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '\uFF1D' or '\uFF0B' or '\uFF0D' or '\uFF20') text = "'" + text;
        return text.AsSpan().IndexOfAny(s_quoted) < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
