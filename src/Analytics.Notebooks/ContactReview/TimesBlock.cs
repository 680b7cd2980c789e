using System.Globalization;
using Analytics.Metrics.Contact;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.ContactReview;

/// <summary>Times to contact against the window: players, then single repetitions.</summary>
internal static class TimesBlock
{
    private const string Quantity = "time from first movement to contact";

    public static Block Of(ReviewDay day) => new Section("Who reaches contact in time",
        "The bar is the player's mean, the line its 95\u2009% interval, dots are his repetitions; the band is the window of the drill.",
        new IntervalPlot
        {
            Title = "Time to contact",
            TitleNote = Basis(day),
            Axis = new Axis(Quantity, "s", 3),
            Window = Window(day),
            Rows = [.. day.Players.Select(Row)],
            Remark = "Chances before, inside and after count the error of the film and how far a player's own repetitions lie apart, pooled over the squad. \"Cannot tell yet\" means no place has four chances in five.",
        });

    public static Block Lines(ReviewDay day) => new Section("Repetition by repetition", "From the first movement to the first touch, each with the error of reading it off the film.",
        new TimelinePlot
        {
            Title = "Events of each repetition",
            Axis = new Axis("time since first movement", "s", 3),
            StartName = "first movement",
            EndName = "contact",
            Window = Window(day),
            Rows =
            [
                .. from player in day.Players
                   from r in player.Repetitions
                   let interval = r.Time.Interval
                   select new TimelineRow(player.Athlete.Name, string.Create(CultureInfo.InvariantCulture, $"rep {r.Trial.Attempt}"), r.Time.Value.Seconds, interval.Low, interval.High, WindowChances.Of(r.Odds).Words, Rate(r.Trial.Clock.Rate.Hertz, r.Trial.Clock.Dropped.Sum(d => d.Count))) { Marks = [.. Touchdowns(r)] },
            ],
        });

    // Counted from the mean first movement, as the time is.
    private static IEnumerable<TimelineMark> Touchdowns(ContactMeasures repetition)
    {
        var clock = repetition.Trial.Clock;
        var start = repetition.Trial.Readings.Average(r => clock.Time(r.FirstMovement.Frame).Seconds);
        return repetition.Trial.Steps.Select(s => new TimelineMark("foot down", clock.Time(s.TouchdownFrame).Seconds - start)).Where(m => m.At > 0);
    }

    internal static string Repetition(int attempt) => string.Create(CultureInfo.InvariantCulture, $"repetition {attempt}");

    private static IntervalRow Row(ReviewPlayer player)
    {
        var interval = player.Time.Interval;
        var chances = player.Chances;
        return new(player.Athlete.Name, player.Time.Value, interval?.Low, interval?.High, chances?.Words ?? "no error known",
            chances?.Where switch { Place.Inside => Tone.Gain, Place.After => Tone.Loss, null => Tone.Muted, _ => Tone.Plain }, player.Athlete.Group, chances?.Numbers ?? "")
        {
            Repetitions = [.. player.Repetitions.Select(r => r.Time.Value.Seconds)],
        };
    }

    private static Window Window(ReviewDay day) => new("window", day.Window.Earliest.Seconds, day.Window.Latest.Seconds);

    private static string Basis(ReviewDay day)
        => $"events judged to {Ms(day.Judgement.FirstMovement.Sd.Milliseconds)} and {Ms(day.Judgement.Contact.Sd.Milliseconds)}, {day.Judgement.FirstMovement.Source}";

    private static string Ms(double ms) => Figures.Plain(ms, 1, "ms");

    private static string Rate(double hertz, int dropped)
        => string.Create(CultureInfo.InvariantCulture, $"{hertz:0} frames a second{(dropped > 0 ? $", {dropped} lost" : "")}");
}
