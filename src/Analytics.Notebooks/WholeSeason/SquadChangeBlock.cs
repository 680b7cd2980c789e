using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Seasons;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Did the squad change: every measure on one axis, in smallest worthwhile changes.</summary>
internal static class SquadChangeBlock
{
    public static Block Of(SeasonContext season)
    {
        if (season.Looked.Count == 0)
            return new Section("Did the squad change?", "No measure was done on two occasions by enough players, so no change can be told.");
        var rows = season.Looked.Select(m => Row(season, m)).OfType<ChangeRow>().ToList();
        return new Section("Did the squad change?",
            "Mean change from the first occasion to the last. One step of the axis is the smallest change that matters in that measure; to the right is better.",
            rows.Count == 0 ? new Note("Nothing can be drawn on this axis." + NotDrawn(season, season.Looked)) : new ChangePlot
            {
                Title = "Season change of the squad against what matters",
                NameHead = "Measure",
                InOrder = true,
                Axis = new Axis("smallest worthwhile changes", "", 1, Better.Higher),
                TooSmall = 1,
                Rows = rows,
                Remark = Remark(season),
            });
    }

    private static ChangeRow? Row(SeasonContext season, Metric metric)
    {
        var trend = season.Trend(metric);
        if (trend.Squad.OverSeason is not { } change || trend.Worthwhile.Value is not (> 0 and var worthwhile)) return null;
        var unit = season.Unit(metric);
        var sign = metric.Better == Direction.Lower ? -1 : 1;
        double[] ends = [sign * change.Interval.Low / worthwhile, sign * change.Interval.High / worthwhile];
        return new ChangeRow(
            metric.Label, sign * change.Change.Difference / worthwhile, ends.Min(), ends.Max(), Directions.Of(metric, trend.Squad.Verdict, trend.Squad.Reason is null),
            Note: trend.Squad.Reason ?? "")
        {
            Shown = unit.ChangeText(change.Change.Difference, change.Interval),
        };
    }

    private static string Remark(SeasonContext season)
        => "Means are those of these players, by a mixed model that lets nobody count double for turning up more often. "
            + "What hits everybody alike on one day (surface, device, weather, practice in the test) is in a mean and not in its interval."
            + RetestShift(season, season.Measures) + NotDrawn(season, season.Measures) + (season.Trials.Count == 0 ? "" : NotDrawn(season, season.Trials));

    private static string RetestShift(SeasonContext season, IReadOnlyList<Metric> measures)
    {
        var looked = measures.Where(m => season.Trend(m).RetestShift?.Mean.Interval is not null).ToList();
        if (looked.Count == 0)
            return season.Data.Settings.Retests.Count == 0 ? " No retest days are set, so how far a day alone moves a mean is not known." : " No retest of enough players shows how far that may go.";
        string[] shifted = [.. looked.Where(m => !season.Trend(m).RetestShift!.Mean.Interval!.Value.Contains(0)).Select(Words.Short)];
        return shifted.Length == 0 ? " Between the retest days, when no true change is expected, no mean clearly moved."
            : $" Between the retest days, when no true change is expected, the mean of {Words.List(shifted)} moved all the same.";
    }

    private static string NotDrawn(SeasonContext season, IReadOnlyList<Metric> measures)
    {
        string[] noModel = [.. measures.Where(m => season.Trend(m).Squad.OverSeason is null).Select(Words.Short)];
        string[] noSize = [.. measures.Where(m => season.Trend(m).Squad.OverSeason is not null && Row(season, m) is null).Select(Words.Short)];
        return (noModel.Length == 0 ? "" : $" Not drawn: {Words.List(noModel)}, since no trend could be fitted.")
            + (noSize.Length == 0 ? "" : $" Not drawn: {Words.List(noSize)}, for want of a smallest worthwhile change; there a change is called clear when its interval leaves out 0.");
    }
}
