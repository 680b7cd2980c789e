using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Statistics.Change;

namespace Analytics.Notebooks.TestingDay;

/// <summary>Who changed since the day before, measure by measure.</summary>
internal static class ChangeBlock
{
    private const int UndecidedShown = 5;

    public static Block Of(DayContext day, IReadOnlyList<Metric> metrics)
    {
        if (day.Before is null)
            return new Section("Who changed", day.IsFirst ? "This is the first testing day, so there is nothing to compare with." : "No comparison was asked for.");
        var charts = metrics.Select(m => Chart(day, day.Change(m))).ToList();
        if (charts.TrueForAll(c => c is Note))
            return new Section($"Who changed since {Words.ShortDate(day.Before.Date)}", "No player did the same test on both days.", [.. charts]);
        return new Section($"Who changed since {Words.ShortDate(day.Before.Date)}",
            "The line is the 95\u2009% interval of a player's own change. A diamond means the change is beyond what test error explains and reaches out of the pale band.",
            [.. charts.OfType<Block>()]);
    }

    private static Block Chart(DayContext day, SquadChange change)
    {
        var metric = change.Metric;
        var unit = day.Unit(metric);
        if (change.Athletes.Count == 0) return new Note($"{metric.Label}: no player did this test on both days.");
        return new ChangePlot
        {
            Title = $"Who changed: {metric.Label}",
            TitleNote = Words.Scale(change.Series),
            Axis = new Axis("change", unit.Symbol, unit.DecimalsFor(change.Athletes.Where(a => a.Verdict.IsClear()).Select(a => a.Interval)), Directions.Of(metric)),
            TooSmall = unit.Of(change.Worthwhile.Value),
            UndecidedShown = UndecidedShown,
            FoldedInPrint = !ResultTables.Holds(metric),
            Rows = [.. change.Athletes.Select(a => Row(day, metric, a, SharedReason(change)))],
            Remark = Remark(day, change),
        };
    }

    /// <summary>Why nobody could be judged, where that is the same for all: said once, not in every row.</summary>
    private static string? SharedReason(SquadChange change)
        => change.Athletes.Count > 1 && change.Athletes.Select(a => a.Reason).Distinct().ToList() is [{ } reason] ? reason : null;

    private static ChangeRow Row(DayContext day, Metric metric, AthleteChange change, string? shared)
    {
        var unit = day.Unit(metric);
        var interval = unit.Of(change.Interval);
        var note = change.Reason is { } reason ? (reason == shared ? "" : reason) : (change.Doubts.Count > 0 && change.Verdict != Verdict.CannotTellYet ? string.Join("; ", change.Doubts) : "");
        return new ChangeRow(day.Name(change.AthleteId), unit.Of(change.Difference), interval?.Low, interval?.High,
            Directions.Of(metric, change.Verdict, change.Change is not null), day.Athlete(change.AthleteId).Position, note);
    }

    private static string Remark(DayContext day, SquadChange change)
    {
        var unit = day.Unit(change.Metric);
        List<string> parts = [Words.ErrorSource(change.Reliability, ErrorText.Of(change.Reliability, unit))];
        if (SharedReason(change) is { } shared && change.Reliability.Error is not null) parts.Insert(0, $"Nobody can be judged: {shared}.");
        if (change.Worthwhile.Value is { } worthwhile)
            parts.Add($"Too small to matter: under {Figures.Plain(unit.Of(worthwhile), unit.Decimals == 0 ? 1 : unit.Decimals, unit.Symbol)}.");
        if (change.Reliability.HoldsDayToDayVariation)
        {
            var another = change.Reliability.Source == ErrorSource.PublishedStudy ? ", if the error of that study holds here" : "";
            parts.Add($"The rule flags an unchanged player at most {Figures.Percent(change.Rule.LargestFalseFlagRate)} of the time{another}.");
        }

        if (change.Athletes.Count(a => a.Remark is not null) is var estimated and > 0)
            parts.Add($"For {Words.Players(estimated)} a maximum was estimated from repetitions on one or both days; the error of the equation is counted.");
        if (ResultTables.Holds(change.Metric) && change.Athletes.Count(a => !a.Verdict.IsClear()) > UndecidedShown) parts.Add($"Every change is also under \u201C{ResultTables.Title}\u201D.");
        if (change.OneDayOnly.Count > 0) parts.Add($"{Words.Capital(Words.Players(change.OneDayOnly.Count))} did it on one of the two days only.");
        if (change.NotCompared.Count > 0)
            parts.Add("Not compared: " + string.Join("; ", change.NotCompared.GroupBy(n => n.Reason).Select(g => $"{Words.List([.. g.Select(n => day.Name(n.AthleteId)).Distinct()])} ({g.Key})")) + ".");
        return string.Join(" ", parts);
    }
}
