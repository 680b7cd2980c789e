using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Seasons;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.OnTrial;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Notebooks.Units;
using Analytics.Statistics.Change;
using Analytics.Statistics.Multiplicity;
using TrendPoint = Analytics.Notebooks.Charts.TrendPoint;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Where the squad and its position groups stood on every occasion, the players behind.</summary>
internal static class TrendBlock
{
    private const int LongestAxisName = 36;

    public static Block Of(SeasonContext season)
    {
        if (season.Pictured.Count == 0) return new Together();
        var first = season.Trend(season.Pictured[0]);
        return new Section("How the season went",
            "The line is the mean of the players with its 95\u2009% interval, the thin lines behind are single players.",
            [new TrendPlot(season.Pictured.Select(m => Panel(season, m, null, m.Label))),
            .. GroupTables(season),
            .. ByChance(season),
            .. season.Pictured.Where(m => season.GroupsOf(m).Count > 1).Select(m => new Folded($"Position groups: {Words.Short(m)}", [new TrendPlot(season.GroupsOf(m).Select(g => Panel(season, m, g.Group, g.Group!)))]) { ScreenOnly = true }),
            new Note(first.Periods.Rule)]);
    }

    private static TrendPanel Panel(SeasonContext season, Metric metric, string? group, string title)
    {
        var trend = season.Trend(metric);
        var unit = season.Unit(metric);
        var course = group is null ? trend.Squad : trend.Groups.First(g => g.Group == group);
        return new TrendPanel
        {
            Still = group is not null,
            Title = title,
            TitleNote = group is null ? Words.Scale(trend.Values.Series) : course.Athletes == 1 ? "1 player" : $"{course.Athletes} players",
            Axis = new Axis(AxisName(metric), unit.Symbol, unit.Decimals, Directions.Of(metric)),
            Lines = [new TrendLine(group ?? "Squad", [.. course.Points.Select(p => new TrendPoint(DayOf(trend, p.Period), unit.Of(p.Mean.Value), unit.Of(p.Mean.Interval?.Low), unit.Of(p.Mean.Interval?.High)))])],
            Behind = [.. trend.Athletes.Where(a => group is null || a.Group == group).Select(a => Behind(trend, a, unit.PerCatalogueUnit))],
        };
    }

    // The title above has the mark.
    private static string AxisName(Metric metric) => OutsideText.Cut(Words.Short(metric with { Label = TrialMark.Without(metric) }), LongestAxisName);

    // One point an occasion: a squad tested every week would else be a thicket.
    private static IReadOnlyList<TrendPoint> Behind(SeasonTrend trend, AthleteCourse athlete, double perUnit)
        => [.. athlete.Values.GroupBy(v => trend.Periods.NumberOf(v.Date)).OrderBy(g => g.Key).Select(g => new TrendPoint(DayOf(trend, trend.Periods.All[g.Key]), g.Average(v => v.Value) * perUnit))];

    private static DateOnly DayOf(SeasonTrend trend, SeasonPeriod period) => trend.Periods.All[0].From.AddDays((int)Math.Round(period.Day));

    // In a table of their own: only the reviewed ones are counted against chance below.
    private static IEnumerable<Block> GroupTables(SeasonContext season)
    {
        const string caption = "Mean change over the season by position group";
        if (season.Headlines.Count > 0) yield return GroupTable(season, caption, season.Headlines);
        if (season.Trials.Count > 0) yield return GroupTable(season, caption + ": trial metrics", season.Trials);
    }

    private static DataTable GroupTable(SeasonContext season, string caption, IReadOnlyList<Metric> metrics) => DataTable.Of(caption, [null, .. season.Groups], t =>
    {
        t.Text("Group", g => g ?? "Squad");
        foreach (var metric in metrics)
        {
            var (unit, trend, groups) = (season.Unit(metric), season.Trend(metric), season.GroupsOf(metric));
            var decimals = unit.DecimalsFor(groups.Append(trend.Squad).Where(c => c.Verdict.IsClear()).Select(c => c.OverSeason?.Interval));
            t.Numeric(Words.Head(metric), unit.Symbol, g =>
            {
                var course = g is null ? trend.Squad : trend.Groups.FirstOrDefault(c => c.Group == g);
                return course is null || g is null || groups.Contains(course) ? Change(metric, course, unit, decimals) : new Cell(null, "too few players");
            });
        }
    });

    // As many looks as groups times measures: some would be called clear had nothing changed.
    private static IEnumerable<Block> ByChance(SeasonContext season)
    {
        var judged = season.Headlines.SelectMany(season.GroupsOf).Where(c => c.Reason is null && c.OverSeason is not null).ToList();
        if (season.Groups.Count < 2 || judged.Count == 0) yield break;
        var chance = ChanceFlags.Of(judged.Count, season.Profile.Rule.LargestFalseFlagRate);
        yield return new Note(string.Create(CultureInfo.InvariantCulture,
            $"Each group is judged by itself: {judged.Count(c => c.Verdict.IsClear())} of {judged.Count} changes of groups are called clear. Had nothing changed, chance alone would give at most {chance.Expected:0.#} on average, seldom more than {chance.High}."));
    }

    private static Cell Change(Metric metric, TrendCourse? course, ShownUnit unit, int decimals)
    {
        if (course?.OverSeason is not { } change) return Cell.Missing;
        var (verdict, tone) = Verdicts.Words(metric, course.Verdict, course.Reason is null);
        var limits = Figures.Limits(unit.Of(change.Interval.Low), unit.Of(change.Interval.High), decimals, signed: true);
        return new Cell(Figures.Signed(unit.Of(change.Change.Difference), decimals), course.Verdict == Verdict.CannotTellYet ? limits : $"{limits} {verdict}", tone);
    }
}
