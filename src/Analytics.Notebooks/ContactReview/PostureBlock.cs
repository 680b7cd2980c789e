using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;

namespace Analytics.Notebooks.ContactReview;

/// <summary>Pictures of one repetition a player: postures, and the leans through the run.</summary>
internal static class PostureBlock
{
    private const int CurvePoints = 32;
    private static readonly ReviewMoment[] Moments = [ReviewMoment.FirstMovement, ReviewMoment.MidWay, ReviewMoment.Contact];

    private static readonly (MarkerRole From, MarkerRole To)[] Parts =
    [
        (MarkerRole.Neck, MarkerRole.Hip), (MarkerRole.Shoulder, MarkerRole.Hip), (MarkerRole.Shoulder, MarkerRole.Elbow), (MarkerRole.Elbow, MarkerRole.Wrist),
        (MarkerRole.Hip, MarkerRole.Knee), (MarkerRole.Knee, MarkerRole.Ankle), (MarkerRole.Ankle, MarkerRole.Heel), (MarkerRole.Heel, MarkerRole.Toe), (MarkerRole.Ankle, MarkerRole.Toe),
    ];

    public static Block Figures(ReviewDay day)
    {
        var shown = Shown(day);
        if (shown.Count == 0) return new Section("Posture into contact", "", new Note("No repetition was digitised; frames alone give times only."));
        return new Section("Posture into contact",
            "One repetition a player, the one nearest to his mean time. Leans are from upright, forward positive; the side towards the camera is drawn thick. After \u00b1 stands half the 95\u2009% interval, rounded up.",
            new SideBySide(shown.Select(s => Sticks(day, s.Player, s.Repetition))));
    }

    public static Block Curves(ReviewDay day)
    {
        var shown = Shown(day);
        var charts = shown.Select(s => Chart(day, s.Player, s.Repetition)).OfType<CurvePlot>().ToList();
        return charts.Count == 0 ? new Together()
            : new Section("Shin and trunk through the run", "Seconds before and after the touch; the band, often as thin as the line, is the 95\u2009% interval by the error of the clicks once filtered; what the filter rounds off is not in it.", new SideBySide(charts));
    }

    private static List<(ReviewPlayer Player, ContactMeasures Repetition)> Shown(ReviewDay day)
        => [.. day.Players.Select(p => (p, p.Repetitions.Where(r => day.Picture(r).Clip is not null).OrderBy(r => Math.Abs(r.Time.Value.Seconds - p.Time.Value)).FirstOrDefault())).Where(s => s.Item2 is not null).Select(s => (s.p, s.Item2!))];

    private static StickFigures Sticks(ReviewDay day, ReviewPlayer player, ContactMeasures repetition) => new()
    {
        Title = player.Athlete.Name,
        TitleNote = $"{player.Athlete.Position}, {TimesBlock.Repetition(repetition.Trial.Attempt)}",
        Postures = [.. Moments.Select(m => Posture(day.Picture(repetition), repetition, m))],
        Numbers = DataTable.Of($"Angles of {player.Athlete.Name}", repetition.Postures, t => t
            .Text("Moment", p => Name(p.Moment))
            .Estimate("Near shin", "\u00b0", 0, p => p.ShinLean.Estimate)
            .Estimate("Far shin", "\u00b0", 0, p => p.FarShinLean.Estimate)
            .Estimate("Trunk", "\u00b0", 0, p => p.TrunkLean.Estimate)
            .Estimate("Knee", "\u00b0", 0, p => p.KneeFlexion.Estimate)
            .Estimate("Hip", "\u00b0", 0, p => p.HipFlexion.Estimate)),
    };

    private static Posture Posture(ClipPicture picture, ContactMeasures repetition, ReviewMoment moment)
    {
        var at = repetition.At(moment);
        var words = string.Join(", ", new[] { Say("shin", at.ShinLean.Estimate), Say("trunk", at.TrunkLean.Estimate) }.Where(w => w.Length > 0));
        if (picture.SampleAt(moment) is not { } sample) return new(Name(moment), words.Length > 0 ? words : "not digitised", []);
        List<Stick> sticks = [.. Parts.SelectMany(p => new[] { Part(p.From.Far(), p.To.Far(), true), Part(p.From, p.To, false) }).OfType<Stick>()];
        return new(Name(moment), words, sticks, Point(MarkerRole.HeadVertex));

        // A midline part has no far twin of its own.
        Stick? Part(MarkerRole from, MarkerRole to, bool far)
            => (from.IsFar() || to.IsFar()) != far ? null : Point(from) is { } a && Point(to) is { } b ? new Stick(a, b, far) : null;
        StickPoint? Point(MarkerRole role) => picture.Clip!.Find(role)?[sample] is { } p ? new StickPoint(p.XMetres, p.YMetres) : null;
    }

    private static CurvePlot? Chart(ReviewDay day, ReviewPlayer player, ContactMeasures repetition)
    {
        var picture = day.Picture(repetition);
        List<Curve> curves = [.. new[] { ("near shin", BodySegment.Shank), ("trunk", BodySegment.Trunk) }.Select(s => picture.Lean(s.Item2) is { } lean ? Line(s.Item1, picture, lean) : null).OfType<Curve>().Where(c => c.Line.Count > 1)];
        return curves.Count == 0 ? null : new CurvePlot
        {
            Title = player.Athlete.Name,
            TitleNote = TimesBlock.Repetition(repetition.Trial.Attempt),
            Across = new Axis("time to contact, 0 is the touch", "s", 2),
            Up = new Axis("lean from upright", "\u00b0"),
            Curves = curves,
            Height = 170,
        };
    }

    private static Curve Line(string name, ClipPicture picture, AngleSeries lean)
    {
        var samples = Enumerable.Range(0, lean.Degrees.Count).Where(i => lean.Degrees[i] is not null && picture.SecondsToContact(i) >= picture.FirstMovement - 0.05 && picture.SecondsToContact(i) <= 0.2).ToList();
        var (step, reach) = (Math.Max(1, samples.Count / CurvePoints), NormalLaw.TwoSided(0.95));
        List<int> drawn = [.. samples.Where((_, i) => i % step == 0)];
        return new(name, [.. drawn.Select(i => (Math.Round(picture.SecondsToContact(i), 3), Math.Round(lean.Degrees[i]!.Value, 1)))])
        {
            Band = [.. drawn.Where(i => lean.StandardErrorDegrees[i] is not null).Select(i => (Math.Round(picture.SecondsToContact(i), 3),
                Math.Round(lean.Degrees[i]!.Value - (reach * lean.StandardErrorDegrees[i]!.Value), 1), Math.Round(lean.Degrees[i]!.Value + (reach * lean.StandardErrorDegrees[i]!.Value), 1)))],
        };
    }

    private static string Say(string what, Estimate? estimate) => estimate is { } e ? $"{what} {Look.Figures.Plain(e.Value, 0)}\u00b0{(e.Interval is { } i ? $"\u2060\u00b1{Look.Figures.Plain(Math.Ceiling((i.High - i.Low) / 2), 0)}" : "")}" : "";

    internal static string Name(ReviewMoment moment) => moment switch { ReviewMoment.FirstMovement => "First movement", ReviewMoment.MidWay => "Mid-way", _ => "Contact" };
}
