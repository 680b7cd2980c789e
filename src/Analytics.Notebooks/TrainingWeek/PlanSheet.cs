using System.Globalization;
using System.Text;
using Analytics.Planning.Loads;
using Analytics.Planning.Plans;
using Analytics.Season.Cells;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>
/// The plan as the file <c>training/plan.csv</c>: a row of the group for what all do, a row of the player for his load in it, for his own work and for what he does apart.
/// Only the words keep and never fix a row; the others tell what was planned.
/// </summary>
internal static class PlanSheet
{
    /// <summary>The file; only its head where there is no plan.</summary>
    public static string Of(WeekContext week)
    {
        var unit = week.Training.Weights.Unit;
        var text = new StringBuilder($"date,day,group,athlete_id,name,exercise,scheme,part,keep,sets,repetitions,load_{unit},minutes,why\n");
        foreach (var session in week.Sessions)
        {
            void Add(PlannedItem item, string? athlete, bool own, string why)
            {
                var player = athlete is null ? null : week.Player(athlete);
                text.AppendJoin(',', new[]
                {
                    session.Slot.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), session.Slot.Date.ToString("dddd", CultureInfo.InvariantCulture), player is null ? session.Group : "", athlete ?? "", player?.Name ?? "",
                    item.Exercise.Id, item.Scheme.Id, own ? "own" : "shared", item.IsKept ? "keep" : "planned",
                    Number(item.Scheme.Sets), Number(item.Scheme.Repetitions), athlete is null ? "" : Load(week.Load(athlete, item, session.Slot.Date), unit), Number(item.Time.Minutes), why,
                }.Select(SheetCell.Write)).Append('\n');
            }

            foreach (var item in session.Shared)
            {
                if (!session.IsApart) Add(item, null, own: false, $"{WeekWords.Kind(session.Kind)} day");
                foreach (var player in session.Players.Where(p => session.IsApart || week.Load(p, item, session.Slot.Date).Working.Count > 0))
                    Add(session.IsApart ? item : item with { IsKept = false }, player, own: false, session.IsApart ? "apart, as licensed staff have listed" : "his load");
            }

            foreach (var own in session.Own)
                foreach (var player in session.Players.Where(p => own.ForNeed.Contains(p) || own.ByDefault.Contains(p)))
                    Add(own.Item, player, own: true, SessionSheet.Why(week.Player(player), own));
        }

        return text.ToString();
    }

    // The heaviest set, as the plan file asks.
    private static string Load(Prescription load, string unit)
        => load.Working.Count == 0 ? "" : Number(load.Working.Max(m => unit == "lb" ? m.Pounds : m.Kilograms));

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
