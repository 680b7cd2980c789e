using System.Globalization;
using System.Text;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.Clips.Study;

/// <summary>docs/clip-study.md.</summary>
public static class ClipStudyDocument
{
    /// <summary>The page.</summary>
    public static string Of(IReadOnlyList<ClipStudy> studies, ulong seed, int repetitions)
    {
        var text = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"""
            # What figures read off clips are worth

            Made by

                dotnet run -c Release --project tests/Analytics.Simulation -- clip-study --repetitions {repetitions} --seed {seed} --out docs/clip-study.md

            {repetitions} made-up repetitions a case: a player with a known sprint runs about 0.6 m into contact, limbs swing, the touch takes speed away and turns the trunk. A pinhole camera 12 m away draws him at 420 px/m with a
            random phase of its frames; somebody clicks landmarks with normal error of 1.5 px and reads both events twice, one frame off in 30 % of them; 20 repetitions make a day, whose repeats are pooled. Where the case does not
            say otherwise, 1 % of frames is lost (time stamps tell), and the player runs 0.5 m nearer than the stick, which the season says. The library gets what a season file would give it, never the truth.

            The motion is smooth and everything happens in one plane: a camera that is not square, markers that slide on the skin and a reader who is always late are **not** in these figures. Coverage is the share of 95 % intervals that hold
            the truth (Monte Carlo error in brackets, in points). Bias is the mean miss as a share of the standard error stated (Monte Carlo error in brackets). The aims are 93 to 97 % and a bias under a tenth; cases outside them are marked.


            """));
        foreach (var study in studies) Write(text, study);
        text.Append("""
            ## What is seen

            - With all landmarks the time to contact, shin lean, speed and momentum at contact reach both aims at 60, 120 and 240 Hz. At low rates they are wide rather than wrong: a shin that turns by several hundred degrees a
              second is known to about the angle it turns in a frame.
            - Trunk lean and trunk change at 60 Hz, and trunk lean at 120 Hz by a little, miss high: the error stated is at most a tenth above the SD of the misses, yet intervals are too wide, though they already count the frame as a uniform error. The cause was not found.
            - The knee at contact at 60 Hz misses low (about 91 to 92 %): the error stated is again about the SD of the misses, so the misses have longer tails than a normal error or the error does not follow each repetition. The cause was not found; film a knee at 120 Hz or more.
            - Trunk and legs alone read speed and momentum too high, by 0.12 to 0.13 of the error stated at 60 Hz and a quarter of it at 240 Hz: most likely because head and arms that nobody clicked do not move as the rest does. The error stated allows for them and
              is wider than the misses, so coverage is high, not low. Click all landmarks where speed matters.
            - A player off the plane of the stick that nobody told the season of makes every speed and momentum wrong by one factor (here 4 %); no interval knows it. Put the stick in the lane.

            """.ReplaceLineEndings("\n"));
        return text.ToString().ReplaceLineEndings("\n");
    }

    private static void Write(StringBuilder text, ClipStudy study)
    {
        text.Append(CultureInfo.InvariantCulture, $"## {study.Case.RateHertz} Hz, {study.Case.Name}\n\n");
        var table = new MarkdownTable("figure", "n", "coverage %", "bias, share of stated error", "SD of misses", "error stated");
        foreach (var (name, unit, decimals, t) in study.Figures)
            table.Row($"{name} ({unit})", t.Count.ToString(CultureInfo.InvariantCulture), Coverage(t), Bias(t), MarkdownTable.Number(t.Sd, decimals), MarkdownTable.Number(t.StatedError, decimals));
        text.Append(table).Append('\n');
    }

    private static string Coverage(MeasureTally t)
    {
        var mark = t.Coverage < 0.93 ? " **low**" : t.Coverage > 0.97 ? " **high**" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{100 * t.Coverage:0.0} ({100 * t.CoverageError:0.0}){mark}");
    }

    private static string Bias(MeasureTally t)
        => string.Create(CultureInfo.InvariantCulture, $"{t.BiasShare:+0.00;−0.00;0.00} ({t.BiasShareError:0.00}){(Math.Abs(t.BiasShare) > 0.1 ? " **over**" : "")}");
}
