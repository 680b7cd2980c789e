using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

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
            .Numeric("Shin lean, each repetition", "\u00b0", Shin)
            .Numeric("Trunk lean", "\u00b0", p => Cell(p.Trunk, 0))
            .Numeric("Speed", "m/s", p => Cell(p.Speed, 2))
            .Numeric("Momentum", "kg\u00b7m/s", p => Cell(p.Momentum, 0))
            .Numeric("Trunk change", "\u00b0", p => Cell(p.TrunkChange, 0)));
        var missing = day.Repetitions.SelectMany(r => r.At(Metrics.Contact.ReviewMoment.Contact).All.Take(3).Concat([r.Speed, r.Momentum, r.TrunkGive]).Where(m => m.Estimate is null).Select(m => (m.Name, m.WhyNot)))
            .GroupBy(m => m).Select(g => $"{Cap(g.Key.Name)}, {g.Count()} {(g.Count() == 1 ? "repetition" : "repetitions")}: {g.Key.WhyNot}.").ToList();
        return new Section("Every figure, player by player", "Posture, speed and momentum are those just before the first touch. The shin is the one towards the camera: on the ground in one repetition, in the air in another, so it is not averaged.", [times, touch, .. missing.Select(m => new Note(m))]);
    }

    private static Cell Cell(PlayerFigure? figure, int decimals) => figure is null ? Tables.Cell.Missing : new Cell(Figures.Plain(figure.Value, decimals), figure.Interval is null ? "no error known" : Limits(figure, decimals));

    // Small print: half the widest interval of reading it.
    private static Cell Shin(ReviewPlayer player)
    {
        var read = ReviewPlayer.Of(player.Repetitions, r => r.At(Metrics.Contact.ReviewMoment.Contact).ShinLean.Estimate);
        if (read.Count == 0) return Tables.Cell.Missing;
        var reach = read.Max(e => e.Interval is { } i ? (i.High - i.Low) / 2 : (double?)null);
        return new Cell(string.Join(" and ", read.Select(e => Figures.Plain(e.Value, 0))), reach is { } r ? $"(\u00b1{Figures.Plain(r, 0)})" : "no error known");
    }

    private static string Limits(PlayerFigure figure, int decimals) => Figures.Limits(figure.Interval?.Low, figure.Interval?.High, decimals);

    private static string Cap(string text) => TestingDay.Words.Capital(text);
}
