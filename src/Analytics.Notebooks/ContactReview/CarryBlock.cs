using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Statistics.Summaries;

namespace Analytics.Notebooks.ContactReview;

/// <summary>Momentum at contact by position group.</summary>
internal static class CarryBlock
{
    public static Block Of(ReviewDay day)
    {
        const string Title = "What players carry into contact";
        var players = day.Players.Where(p => p.Momentum is not null).ToList();
        if (players.Count == 0) return new Section(Title, "", new Note("No momentum: it needs digitised points and a body mass."));
        return new Section(Title, "Momentum is body mass times speed at the touch. Players are in the order of their groups, not of the figures.",
            new Together(new StripPlot([Groups(players)]), new IntervalPlot
            {
                Title = "Momentum at contact, player by player",
                Axis = new Axis("momentum at contact", "kg\u00b7m/s"),
                Rows =
                [
                    .. players.GroupBy(p => p.Athlete.Group).SelectMany(g => g).Select(p => new IntervalRow(
                        p.Athlete.Name, p.Momentum!.Value, p.Momentum.Interval?.Low, p.Momentum.Interval?.High, Figures.Interval(p.Speed?.Value, p.Speed?.Interval, 1, "m/s"), Tone.Plain, p.Athlete.Group, Mass(p, day))
                    {
                        Repetitions = [.. ReviewPlayer.Of(p.Repetitions, r => r.Momentum.Estimate).Select(e => e.Value)],
                    }),
                ],
                Remark = "It says what is carried, not how hard to hit: head up and out of contact.",
            }));
    }

    private static StripPanel Groups(IReadOnlyList<ReviewPlayer> players) => new()
    {
        Title = "Momentum by position group",
        Axis = new Axis("momentum at contact", "kg\u00b7m/s"),
        Groups =
        [
            .. players.GroupBy(p => p.Athlete.Group).Select(g => new StripGroup(
                g.Key, [.. g.Select(p => new StripDot(p.Athlete.Name, p.Momentum!.Value))], Quantiles.Median([.. g.Select(p => p.Momentum!.Value)]))),
        ],
    };

    private static string Mass(ReviewPlayer player, ReviewDay day)
    {
        if (day.Context.DayOf(player.Athlete.Id)?.BodyMass is not { } mass) return "";
        return day.Season.Settings.MassUnit == "lb" ? "body mass " + Figures.Plain(mass.Pounds, 0, "lb") : "body mass " + Figures.Plain(mass.Kilograms, 0, "kg");
    }
}
