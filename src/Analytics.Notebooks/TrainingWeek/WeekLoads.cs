using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Loads of the tested lifts where there is no plan: what a coach needs to run a session by hand.</summary>
internal static class WeekLoads
{
    // Three times three at 80 % leave something in reserve whatever the table (our choice, no source).
    private const double Percent = 80;

    public static ReportBlock Of(WeekView view)
    {
        var lifts = view.Week.Training.Exercises.All.Where(e => e.Basis.Lift == e.Id && view.Players.Any(p => p.Maxima.ContainsKey(e.Id))).ToList();
        if (lifts.Count == 0) return new Together();
        var unit = view.Week.Training.Weights.Unit;
        return new Section("Loads for a session by hand", "80\u2009% of the 1RM each player is known to have, rounded down to bar and plates.", new DataTable("Loads by player",
            [new Column("Player"), .. lifts.Select(l => new Column(l.Name, true, unit))],
            view.Players.Select(p => (IReadOnlyList<Cell>)[new Cell(p.Name), .. lifts.Select(l => Load(view, p.Id, l))])));
    }

    private static Cell Load(WeekView view, string player, Exercise lift)
    {
        var scheme = new SetScheme { Id = "by_hand", Name = "by hand", Qualities = [lift.Quality], Sets = 3, Repetitions = 3, LeastPercent = Percent, MostPercent = Percent, Rest = Duration.FromMinutes(3) };
        var text = LoadText.Of(view.Week, view.Week.Load(player, new PlannedItem(lift, scheme, null, Duration.FromMinutes(10), false), view.Week.Choice.Monday), new SheetMarks(), []);
        return new(text.Main, text.Marks.Length > 0 && !text.IsWord ? "lower side or with a doubt" : "");
    }
}
