using System.Globalization;
using System.Text;
using Analytics.Planning.Loads;
using Analytics.Planning.Plans;
using Analytics.Quantities;
using Analytics.Season.Cells;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>
/// The plan as the file <c>training/plan.csv</c>: a row of the group for what all do, a row of the player for his load in it, for his own work and for what he does apart.
/// Only the words keep and never fix a row; the others tell what was planned. Rows of other weeks come along as they were read, so that the file may take the place of the one before.
/// </summary>
internal static class PlanSheet
{
    /// <summary>The file; only its head where there is no plan.</summary>
    public static string Of(WeekContext week)
    {
        var unit = week.Training.Weights.Unit;
        var text = new StringBuilder($"date,day,start,group,athlete_id,name,exercise,scheme,part,keep,sets,repetitions,load_{unit},minutes,why\n");
        AddEarlier(text, week, e => e.Date < week.Choice.Monday);
        foreach (var session in week.Sessions)
        {
            void Add(PlannedItem item, string? athlete, bool own, string why)
            {
                var player = athlete is null ? null : week.Player(athlete);
                text.AppendJoin(',', new[]
                {
                    Date(session.Slot.Date), Weekday(session.Slot.Date), Time(session.Slot.Start), player is null ? session.Group : "", athlete ?? "", player?.Name ?? "",
                    item.Exercise.Id, item.Scheme.Id, own ? "own" : "shared", item.IsKept ? "keep" : "planned",
                    Number(item.Scheme.Sets), Number(item.Scheme.Repetitions), athlete is null ? "" : Load(week.Load(athlete, item, session.Slot.Date), unit), Number(item.Time.Minutes), why,
                }.Select(SheetCell.Write)).Append('\n');
            }

            foreach (var item in session.Shared)
            {
                if (!session.IsApart) Add(item, null, own: false, $"{WeekWords.Kind(session.Kind)} day");
                foreach (var player in session.Players.Where(p => session.IsApart || week.Load(p, item, session.Slot.Date).Working.Count > 0))
                    Add(session.IsApart ? item : item with { IsKept = false }, player, own: false, session.IsApart ? "apart, what his restrictions leave" : "his load");
            }

            foreach (var own in session.Own)
                foreach (var player in session.Players.Where(p => own.ForNeed.Contains(p) || own.ByDefault.Contains(p)))
                    Add(own.Item, player, own: true, SessionSheet.Why(week.Player(player), own));
        }

        AddEarlier(text, week, e => e.Date >= week.Choice.Monday.AddDays(7));
        return text.ToString();
    }

    /// <summary>How many rows of other weeks the file keeps.</summary>
    public static int Kept(WeekContext week) => week.Training.Earlier.Count(e => e.Date < week.Choice.Monday || e.Date >= week.Choice.Monday.AddDays(7));

    private static void AddEarlier(StringBuilder text, WeekContext week, Func<EarlierChoice, bool> which)
    {
        var names = week.Season.Athletes.ToDictionary(a => a.Id, a => a.Name, StringComparer.Ordinal);
        foreach (var row in week.Training.Earlier.Where(which))
            text.AppendJoin(',', new[]
            {
                Date(row.Date), Weekday(row.Date), Time(row.Start), row.Group ?? "", row.AthleteId ?? "", row.AthleteId is { } id ? names.GetValueOrDefault(id, "") : "", row.ExerciseId, row.SchemeId ?? "",
                row.IsOwnWork ? "own" : "shared", row.Force.ToString().ToLowerInvariant(), row.Sets is { } sets ? Number(sets) : "", row.Repetitions is { } repetitions ? Number(repetitions) : "",
                row.LoadKilograms is { } load ? Number(In(Mass.FromKilograms(load), week.Training.Weights.Unit)) : "", "", "planned before",
            }.Select(SheetCell.Write)).Append('\n');
    }

    // The heaviest set, as the plan file asks.
    private static string Load(Prescription load, string unit)
        => load.Working.Count == 0 ? "" : Number(load.Working.Max(m => In(m, unit)));

    private static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // Where a group trains twice on a day, the start tells its sessions apart.
    private static string Time(TimeOnly? start) => start?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "";

    private static string Weekday(DateOnly date) => date.ToString("dddd", CultureInfo.InvariantCulture);

    private static double In(Mass mass, string unit) => unit == "lb" ? mass.Pounds : mass.Kilograms;

    private static string Number(double value) => Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
}
