using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Which week, for whom, from which tests; and loudly when there is no plan.</summary>
internal static class WeekHead
{
    public static ReportBlock Of(WeekView view)
    {
        var (week, season) = (view.Week, view.Week.Season);
        var tested = season.Days.Where(d => d.Date <= week.Choice.Monday && d.Athletes.Any(a => a.Trials.Count > 0)).Select(d => (DateOnly?)d.Date).Max();
        var title = $"Training week, {Words.Date(week.Choice.Monday)}";
        string[] parts =
        [
            view.Only is null ? $"{Words.PlayersOf(week.Squad.Players.Count, week.Squad.Players.Count + week.Squad.Out.Count)} train" : view.Only.Group,
            tested is { } day ? $"loads from tests up to {Words.Date(day)}" : "nobody was tested yet",
        ];
        var head = new ReportHead(view.Only is null ? title : $"{view.Only.Name}: training week, {Words.Date(week.Choice.Monday)}", season.Settings.Club, string.Join(" \u00B7 ", parts));
        List<Block> under = [];
        if (week.Answer.Plan is null) under.Add(ClashBlock.Callout(view));
        if (week.Choice.IsUsualWeek) under.Add(new Note($"Sessions: {week.Choice.From}."));
        return under.Count == 0 ? head : new Together(head, new UnderHead(under));
    }
}
