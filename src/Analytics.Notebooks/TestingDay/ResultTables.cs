using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Statistics.Change;

namespace Analytics.Notebooks.TestingDay;

/// <summary>Every player's results with the change since the day before: strength, jumps, sprints.</summary>
internal static class ResultTables
{
    public const string Title = "Results by player";

    /// <summary>Whether a metric has a column in one of the tables.</summary>
    public static bool Holds(Metric metric) => PlayerTable.Of(metric) is not null;

    public static Block Of(DayContext day, PlayerTable which)
    {
        var caption = which.Caption;
        var columns = which.Columns(day.Metrics).Select(m => (Metric: m, Day: day.Standing(m).Day)).Where(c => c.Day.Values.Count > 0).ToList();
        var athletes = day.Season.Athletes.Where(a => columns.Any(c => c.Day.For(a.Id) is not null)).ToList();
        if (athletes.Count == 0) return new Note($"{caption}: no results today.");
        var table = DataTable.Of(caption, athletes, t =>
        {
            t.Text("Player", a => new Cell(a.Name, a.Position));
            foreach (var (metric, metricDay) in columns)
            {
                var unit = day.Unit(metric);
                t.Numeric(Words.Head(metric), unit.Symbol, a => metricDay.For(a.Id) is { } value ? Value(day, metric, value) : Cell.Missing);
            }
        });
        return new Folded($"{caption}: {athletes.Count} player{(athletes.Count == 1 ? "" : "s")}", [table, .. Remarks(day, columns.Select(c => c.Metric), columns.Select(c => c.Day))]);
    }

    private static Cell Value(DayContext day, Metric metric, DayValue value)
    {
        var unit = day.Unit(metric);
        var change = day.Before is null ? null : day.Change(metric).Athletes.FirstOrDefault(a => a.AthleteId == value.AthleteId);
        // A rise of body mass is neither good nor bad by itself.
        var tone = metric.Better == Direction.Neither ? Tone.Plain
            : change?.Verdict switch { Verdict.ClearGain => Tone.Gain, Verdict.ClearLoss => Tone.Loss, _ => Tone.Plain };
        var note = change is null ? "" : Figures.Signed(unit.Of(change.Difference), unit.Decimals)
            + (change.Verdict.IsClear() ? " " + Directions.Of(metric, change.Verdict, true).Words() : "");
        if (EstimatedLift.Note(day, metric, value.AthleteId) is { } how) note = note.Length == 0 ? how : $"{note}; {how}";
        var mark = value.Doubts.Count > 0 ? "~" : "";
        return new Cell(mark + Figures.Plain(unit.Of(value.Value), unit.Decimals), note, tone);
    }

    private static IEnumerable<Block> Remarks(DayContext day, IEnumerable<Metric> metrics, IEnumerable<MetricDay> days)
    {
        if (day.Before is not null && metrics.Any(m => day.Change(m).Athletes.Any()))
            yield return new Note($"Small print under a number: change since {Words.ShortDate(day.Before.Date)}. It is news only where it says clear.");
        var doubts = days.SelectMany(d => d.Values.SelectMany(v => v.Doubts.Select(t => (Label: Words.Head(d.Metric), Text: t))))
            .GroupBy(d => d).GroupBy(g => (Players: g.Count(), g.Key.Text)).OrderByDescending(g => g.Key.Players)
            .Select(g => $"{Words.List([.. g.Select(d => d.Key.Label)])}, {Words.Players(g.Key.Players)}: {g.Key.Text}").ToList();
        if (doubts.Count > 0) yield return new Note("~ doubtful. " + string.Join(". ", doubts) + ".");
        var errors = metrics.Select(m => (Metric: m, Reliability: day.Standing(m).Reliability))
            .Select(r => $"{Words.Head(r.Metric)} {ErrorText.Of(r.Reliability, day.Unit(r.Metric))}");
        yield return new Note("Typical error of one test day: " + string.Join("; ", errors) + ".");
    }
}
