using System.Globalization;
using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.ContactReview;

/// <summary>What would make the next evening of film worth more, most wanted first; only what this film shows.</summary>
internal static class FilmBetterBlock
{
    private const double ShortScaleShare = 0.01;
    private static readonly MarkerRole[] Wanted = [MarkerRole.Shoulder, MarkerRole.Hip, MarkerRole.Knee, MarkerRole.Ankle, MarkerRole.FarHip, MarkerRole.FarKnee, MarkerRole.FarAnkle];

    public static Block Of(ReviewDay day)
    {
        List<string> lines = [.. Lines(day)];
        return new Section("What to film better next time", "", lines.Count == 0
            ? new Note("Nothing stands out: rate, markers, scale and repeat readings were all in order.")
            : new Callout(lines.Count == 1 ? "One thing would help." : $"{Words.Capital(Words.Count(lines.Count))} things would help.", lines));
    }

    private static IEnumerable<string> Lines(ReviewDay day)
    {
        var all = day.Repetitions.ToList();
        var needed = FrameRateNeeded.ToTell(day.Window.Earliest, day.Window.Latest, 0.95, day.Judgement);
        var slow = all.Where(r => needed.Rate is { } rate && r.Trial.Clock.Rate.Hertz < rate.Hertz).ToList();
        var span = string.Create(CultureInfo.InvariantCulture, $"{day.Window.Earliest.Seconds:0.00#} from {day.Window.Latest.Seconds:0.00#} s");
        if (needed.Rate is null)
            yield return $"Read the events more carefully: with an error of judgement of {Figures.Plain(needed.Judgement.Milliseconds, 0, "ms")} no frame rate tells {span} in one repetition.";
        else if (slow.Count > 0)
            yield return $"Film at {Figures.Plain(needed.UsualRate?.Hertz ?? needed.Rate.Value.Hertz, 0)} frames a second or more, best 240: {Repetitions(slow.Count)} at {Rates(slow)} cannot tell {span} apart.";
        if (Share(all) is > 2 and var times)
            yield return $"Angles are known less well from slow film: at 60 frames a second a lean at contact was read {Figures.Plain(times, 0)} times less sharply than at 240.";
        var once = all.Count(r => r.Trial.Readings.Count < 2);
        if (day.Judgement.FirstMovement.DegreesOfFreedom is null)
            yield return "Read some clips twice, on another day or by somebody else: without it the error of judging the events is assumed, not known.";
        else if (day.Judgement.FirstMovement.DegreesOfFreedom < 6)
            yield return $"Read a few more clips twice: the error of judging the events rests on {day.Judgement.FirstMovement.DegreesOfFreedom} repeat readings; {Repetitions(once)} were read once.";
        if (all.Any(r => r.Trial.Shutter is null))
            yield return "Look up how long the phone takes to read out a picture (readout_ms) and note the row of each event: without it a time may be off by several ms.";
        var bare = all.Count(r => r.Trial.Digitised is null);
        if (bare > 0) yield return $"Digitise {Repetitions(bare)}: frames alone give a time but no angle, speed or momentum.";
        foreach (var line in Markers(all)) yield return line;
        var lost = all.Where(r => r.Trial.Clock.Dropped.Count > 0).ToList();
        if (lost.Count > 0)
            yield return $"The phone lost {lost.Sum(r => r.Trial.Clock.Dropped.Sum(d => d.Count))} frames in {Repetitions(lost.Count)}: more light, a cooler phone and free storage help. Time stamps made up for it.";
        var stamps = all.Count(r => r.Trial.Clock.FrameCount is null);
        if (stamps > 0) yield return $"Export the time stamps of the frames: {Repetitions(stamps)} {(stamps == 1 ? "trusts" : "trust")} an even rate, and lost frames cannot be seen.";
        if (all.Any(r => r.Trial.Gap is null)) yield return "Measure the gap and write it down: times over different gaps are different tests.";
    }

    private static IEnumerable<string> Markers(List<ContactMeasures> all)
    {
        var clips = all.Where(r => r.Trial.Digitised is not null).Select(r => r.Trial.Digitised!).ToList();
        if (clips.Count == 0) yield break;
        string[] missing = [.. Wanted.Where(m => clips.Any(c => c.Find(m) is null)).Select(m => m.InWords())];
        if (missing.Length > 0) yield return $"Click also {Words.List(missing)}: {(missing.Length == 1 ? "it is" : "they are")} missing in some clips.";
        var gaps = clips.Count(c => c.Tracks.Any(t => t.Pieces.Count > 1));
        if (gaps > 0) yield return $"Markers were hidden for some frames in {Repetitions(gaps)}; a second try at those frames fills the gaps.";
        if (clips.Max(c => c.ScaleRelativeSd ?? 0) is > ShortScaleShare and var share)
            yield return $"Use a longer stick or click its ends in more frames: the scale alone puts {Figures.Plain(100 * share, 1, "%")} on every speed.";
        if (clips.Any(c => c.PointSd is null)) yield return "Write digitising_sd_px into season.json (click one clip twice to learn it): without it angles have an error from their own scatter only.";
        var ends = all.Count(r => r.Trial.Digitised is not null && r.TrunkGive.Estimate is null);
        if (ends > 0) yield return $"Digitise until 0.2 s after the touch: {Repetitions(ends)} {(ends == 1 ? "ends" : "end")} too early to see whether the trunk holds.";
    }

    // Mean error of a lean at contact, slow film over fast.
    private static double? Share(List<ContactMeasures> all)
    {
        double[] Errors(Func<double, bool> rate) => [.. all.Where(r => rate(r.Trial.Clock.Rate.Hertz)).Select(r => r.At(ReviewMoment.Contact).ShinLean.Estimate?.StandardError).OfType<double>()];
        double[] slow = Errors(r => r is > 50 and < 70), fast = Errors(r => r is > 200 and < 260);
        return slow.Length > 0 && fast.Length > 0 ? slow.Average() / fast.Average() : null;
    }

    private static string Rates(IEnumerable<ContactMeasures> slow) => string.Join(" and ", slow.Select(r => Math.Round(r.Trial.Clock.Rate.Hertz)).Distinct().Order().Select(r => r.ToString(CultureInfo.InvariantCulture)));

    private static string Repetitions(int count) => $"{Words.Count(count)} {(count == 1 ? "repetition" : "repetitions")}";
}
