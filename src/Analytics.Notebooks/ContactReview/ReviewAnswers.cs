using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Quantities;
using Analytics.Statistics.Summaries;

namespace Analytics.Notebooks.ContactReview;

/// <summary>Soon enough? With what behind it? Does the trunk hold?</summary>
internal static class ReviewAnswers
{
    /// <summary>A trunk that turns by more than this after contact gives: our choice, no source.</summary>
    internal const double GivesDegrees = 10;

    public static Block Of(ReviewDay day) => new Answers(Time(day), Carry(day), Trunk(day));

    public static Block NothingFilmed() => new Answers(
        new Answer("No repetition on film yet.", "Film a few repetitions from the side at 240 frames a second, write the frame of first movement and of contact into contact.csv of the testing day, and run this again.", Tone.Muted),
        new Answer("Two numbers a repetition are enough to begin.", "Digitised points add angles, speed and momentum; docs/data-dictionary.md has both files.", Tone.Muted));

    private static Answer Time(ReviewDay day)
    {
        var places = day.Players.Select(p => p.Chances?.Where).ToList();
        int inside = places.Count(p => p == Place.Inside), after = places.Count(p => p == Place.After), before = places.Count(p => p == Place.Before), open = places.Count(p => p is null);
        List<string> parts = [$"{(inside == 0 ? "None" : Words.Capital(Words.Count(inside)))} of {Words.Count(day.Players.Count)} reach contact inside {day.Window}"];
        if (after > 0) parts.Add($"{Words.Count(after)} later");
        if (before > 0) parts.Add($"{Words.Count(before)} sooner");
        if (open > 0) parts.Add($"{Words.Count(open)} cannot be told yet");
                return new(string.Join("; ", parts) + ".",
            $"Mean of the players {Mean([.. day.Players.Select(p => p.Time.Value)], 3, "s")} from first movement to contact{Gap(day)}. A place is named from {Figures.Percent(WindowChances.Sure)} chance on.",
            after > inside ? Tone.Loss : inside > 0 ? Tone.Gain : Tone.Muted);
    }

    private static Answer Carry(ReviewDay day)
    {
        double[] speeds = [.. day.Players.Select(p => p.Speed?.Value).OfType<double>()], momenta = [.. day.Players.Select(p => p.Momentum?.Value).OfType<double>()];
        if (speeds.Length == 0) return new("Speed at contact: not measured.", "It needs digitised points of shoulder, hips, knees and ankles, and a length of known size in the picture.", Tone.Muted);
        var carried = momenta.Length == 0 ? "No body mass is known, so no momentum." : $"They carry {Range(momenta, 0, "kg\u00b7m/s")}{(DiffersByMass(momenta, speeds) ? ", by mass far more than by speed" : "")}.";
        return new($"They run {Range(speeds, 1, "m/s")} when they touch.", $"Mean {Mean(speeds, 2, "m/s")}, {Words.Players(speeds.Length)}. {carried} Each player's doubt stands below.");
    }

    // Said only where the momenta lie half as far apart again as the speeds, on a scale of ratios.
    private static bool DiffersByMass(double[] momenta, double[] speeds)
        => momenta.Length > 2 && momenta.Concat(speeds).All(v => v > 0)
            && Moments.StandardDeviation([.. momenta.Select(m => Math.Log(m))]) > 1.5 * Moments.StandardDeviation([.. speeds.Select(v => Math.Log(v))]);

    private static string Range(double[] values, int decimals, string unit)
        => values.Length == 1 ? Figures.Plain(values[0], decimals, unit) : $"{Figures.Plain(values.Min(), decimals)} to {Figures.Plain(values.Max(), decimals, unit)}";

    private static Answer Trunk(ReviewDay day)
    {
        var changes = day.Players.Select(p => p.TrunkChange).OfType<PlayerFigure>().Where(c => c.Interval is not null).ToList();
        if (changes.Count == 0) return new("Trunk after contact: not measured.", "It needs shoulder and hip digitised until 0.2 s after contact.", Tone.Muted);
        int gives = changes.Count(c => c.Interval!.Value.High < -GivesDegrees || c.Interval.Value.Low > GivesDegrees), holds = changes.Count(c => c.Interval!.Value.Low > -GivesDegrees && c.Interval.Value.High < GivesDegrees);
        var open = changes.Count - gives - holds;
        return new($"The trunk {(holds == 0 ? "surely holds in none" : "holds in " + Words.Count(holds))} of {Words.Players(changes.Count)} and gives in {(gives == 0 ? "none" : Words.Count(gives))}{(open > 0 ? $"; {Words.Count(open)} cannot be told yet" : "")}.",
            $"Gives: turns by more than {Figures.Plain(GivesDegrees, 0)}\u00b0 in the 0.15 s after the touch, the whole interval beyond it. It depends on the other party too.", gives > holds ? Tone.Loss : holds > 0 ? Tone.Gain : Tone.Muted);
    }

    private static string Gap(ReviewDay day)
    {
        Length[] gaps = [.. day.Repetitions.Select(r => r.Trial.Gap).OfType<Length>().Distinct()];
        return gaps.Length == 1 ? string.Create(CultureInfo.InvariantCulture, $" over {gaps[0].Metres:0.##} m ({gaps[0].Yards:0.#} yd)") : gaps.Length > 1 ? ", over different gaps" : "";
    }

    private static string Mean(double[] values, int decimals, string unit)
        => values.Length < 2 ? Figures.Plain(values[0], decimals, unit) : Figures.Interval(values.Average(), MeanEstimate.Of(values).Interval, decimals, unit);
}
