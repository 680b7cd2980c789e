using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Statistics.Distributions;

namespace Analytics.Notebooks.ContactReview;

/// <summary>All figures of every player, and why some are missing.</summary>
internal static class ReviewTable
{
    public static Block Of(ReviewDay day)
    {
        // Two tables: one would be too wide for a tablet.
        var times = DataTable.Of("Time to contact, mean of the repetitions with 95\u2009% interval", day.Players, t => t
            .Text("Player", p => new Cell(p.Athlete.Name, p.Athlete.Position))
            .Number("Repetitions", "", 0, p => p.Repetitions.Count)
            .Numeric("Time", "s", p => new Cell(Figures.Plain(p.Time.Value, 3), Limits(p.Time, 3)))
            .Text("Window", p => p.Chances is { } c ? new Cell(Cap(c.Words), c.Numbers) : new Cell("no error known")));
        var touch = DataTable.Of("At the touch, means with 95\u2009% intervals", day.Players, t => t
            .Text("Player", p => new Cell(p.Athlete.Name, p.Athlete.Position))
            .Numeric("Shin lean, leg on the ground", "\u00b0", p => Cell(p.Shin, 0))
            .Numeric("Trunk lean", "\u00b0", p => Cell(p.Trunk, 0))
            .Numeric("Speed", "m/s", p => Cell(p.Speed, 2))
            .Numeric("Momentum", "kg\u00b7m/s", p => Cell(p.Momentum, 0))
            .Numeric("Trunk change", "\u00b0", p => Cell(p.TrunkChange, 0)));
        var missing = day.Repetitions.SelectMany(r => new[] { r.GroundShinLean, r.At(Metrics.Contact.ReviewMoment.Contact).TrunkLean, r.Speed, r.Momentum, r.TrunkGive }.Where(m => m.Estimate is null).Select(m => (m.Name, m.WhyNot)))
            .GroupBy(m => m).GroupBy(g => (Repetitions: g.Count(), g.Key.WhyNot))
            .Select(g => $"{Cap(TestingDay.Words.List([.. g.Select(m => m.Key.Name)]))}, {g.Key.Repetitions} {(g.Key.Repetitions == 1 ? "repetition" : "repetitions")}: {g.Key.WhyNot}.").ToList();
        return new Section("Every figure, player by player", "Posture, speed and momentum are those just before the first touch. The leg on the ground is the one whose ankle is lower.", [new Together([times, touch, .. Steps(day) is { } steps ? [steps] : Array.Empty<Block>()]), .. missing.Select(m => new Note(m))]);
    }

    private static Cell Cell(PlayerFigure? figure, int decimals) => figure is null ? Tables.Cell.Missing : new Cell(Figures.Plain(figure.Value, decimals), figure.Interval is null ? "no error known" : Limits(figure, decimals));

    private static DataTable? Steps(ReviewDay day)
    {
        var rows = (from player in day.Players from r in player.Repetitions from step in r.Steps where step.Contact is not null || step.Step is not null select (player.Athlete.Name, r.Trial.Attempt, Step: step)).ToList();
        return rows.Count == 0 ? null : DataTable.Of("Steps, with 95\u2009% by the error of the frames", rows, t => t
            .Text("Player", r => r.Name)
            .Text("Step", r => new Cell($"{r.Step.Number}, {(r.Step.Far ? "far" : "near")} foot", TimesBlock.Repetition(r.Attempt)))
            .Numeric("On the ground", "s", r => Time(r.Step.Contact))
            .Numeric("In the air", "s", r => Time(r.Step.Flight))
            .Numeric("Step", "s", r => Time(r.Step.Step)));
    }

    private static Cell Time(Metrics.Motion.FrameTime? time)
        => time is { } t ? new Cell(Figures.Plain(t.Value.Seconds, 3), $"(\u00b1{Figures.Plain(NormalLaw.TwoSided(0.95) * t.StandardError.Seconds, 3)})") : Tables.Cell.Missing;

    private static string Limits(PlayerFigure figure, int decimals) => Figures.Limits(figure.Interval?.Low, figure.Interval?.High, decimals);

    private static string Cap(string text) => TestingDay.Words.Capital(text);
}
