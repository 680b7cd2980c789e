using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;

namespace Analytics.Notebooks.TestingDay;

/// <summary>Where each position group stands in the headline measures: a strip of players for each.</summary>
internal static class StandingBlock
{
    public static Block Of(DayContext day)
    {
        Metric[] shown = [.. day.Headlines, .. day.OnTrial.Metrics.Where(m => day.Standing(m).Day.Values.Count > 0)];
        if (shown.Length == 0)
            return new Section("Where each group stands", "No headline measure was taken today from enough players to compare.");
        var before = day.Before is null ? null : Words.ShortDate(day.Before.Date);
        var panels = shown.Select(m => Panel(day, m));
        return new Section("Where each group stands",
            "Every dot is a player, the bar is the middle player of the group today" + (before is null ? "." : $", the ring its middle on {Words.ShortDate(day.Before!.Date)}."),
            new StripPlot(panels, before));
    }

    private static StripPanel Panel(DayContext day, Metric metric)
    {
        var unit = day.Unit(metric);
        var today = day.Standing(metric);
        var series = today.Day.Series;
        // Only a middle on the same scale may stand beside today's.
        var before = day.Before is null ? null : MetricDay.Of(metric, day.Before.Athletes, series);
        return new StripPanel
        {
            Title = metric.Label,
            TitleNote = Words.Scale(series),
            Axis = new Axis(metric.Label, unit.Symbol, unit.Decimals, Directions.Of(metric)),
            Groups =
            [
                .. day.Groups.Select(group => new StripGroup(
                    group,
                    [.. today.Athletes.Where(a => a.Group == group).Select(a => new StripDot(day.Name(a.AthleteId), unit.Of(a.Value.Value)))],
                    unit.Of(today.Groups.FirstOrDefault(g => g.Group == group)?.Values.Median),
                    unit.Of(Median(day, before, group)))),
            ],
        };
    }

    private static double? Median(DayContext day, MetricDay? metricDay, string group)
    {
        var values = metricDay?.Values.Where(v => day.Athlete(v.AthleteId).Group == group).Select(v => v.Value).ToArray() ?? [];
        return values.Length == 0 ? null : Analytics.Statistics.Summaries.Quantiles.Median(values);
    }
}
