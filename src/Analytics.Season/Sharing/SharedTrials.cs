using Analytics.Metrics.Load;
using Analytics.Metrics.Trials;
using Analytics.Season.Clips;
using Analytics.Season.Intake;
using Analytics.Season.Trials;

namespace Analytics.Season.Sharing;

/// <summary>Trials of a shared season.</summary>
internal sealed class SharedTrials(SharedNames names, SharedPaths paths, bool hidesLines)
{
    private readonly Dictionary<(string Kind, string Written), string> tests = [];
    private readonly HashSet<(string Kind, string Shown)> taken = [];
    private readonly Dictionary<string, string> testers = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>A day; athletes by what they are called.</summary>
    public TestingDay Day(TestingDay day)
        => day with { Athletes = [.. day.Athletes.Select(a => (Day: a, Shown: names.Of(a.AthleteId))).OrderBy(a => names.Place(a.Shown)).Select(a => Athlete(a.Day, a.Shown))] };

    /// <summary>A training session.</summary>
    public TrainingSession Session(TrainingSession session) => session with
    {
        AthleteId = names.Of(session.AthleteId),
        Focus = names.Words(session.Focus),
        Exercises = [.. session.Exercises.Select(e => new ExerciseSets(Test("lift", e.Lift, KnownLift.Ids), e.Sets, e.Repetitions, e.Load))],
    };

    /// <summary>A lift, or an exercise that may be one.</summary>
    /// <param name="written">Identifier as written.</param>
    /// <param name="known">Identifiers that are the kit's own words.</param>
    public string Lift(string written, IReadOnlyList<string> known) => known.Contains(written) ? written : Test("lift", written, KnownLift.Ids);

    // Stature would tell a player apart, and nothing made from a season needs it any more.
    private AthleteDay Athlete(AthleteDay day, string shown) => day with { AthleteId = shown, Stature = null, Trials = [.. day.Trials.Select(Trial)] };

    private Trial Trial(Trial trial)
    {
        var shared = TrialPeople.With(trial, names.Of);
        if (trial.Source is { } at) shared = shared with { Source = new TrialSource(paths.Path(at.File), hidesLines ? 0 : at.Line) };
        if (trial.Tester is { } tester) shared = shared with { Tester = Tester(tester) };
        return shared switch
        {
            ContactTrial film => film with { Clip = paths.Clip(film.Date, film.Clip), Digitised = film.Digitised is { } clip ? clip.With(clip.Tracks.Select(t => t.Named(MarkerWords.Word(t.Role)))) : null },
            BodyMeasure body => body with { Stature = null },
            LiftSet lift => lift with { Lift = Test("lift", lift.Lift, KnownLift.Ids) },
            ThrowTrial ball => ball with { Throw = Test("throw", ball.Throw, ThrowsTable.Known) },
            AgilityTrial run => run with { Test = Test("test", run.Test, AgilityTable.KnownTests) },
            _ => shared,
        };
    }

    /// <summary>A tester may be anybody's name or number: testers are numbered as they first appear, by day and by what players are called.</summary>
    private string Tester(string written)
    {
        if (!testers.TryGetValue(written, out var shown)) testers.Add(written, shown = FormattableString.Invariant($"tester {testers.Count + 1}"));
        return shown;
    }

    /// <summary>A lift, throw or test as typed may be called after a player. Two that differ stay two.</summary>
    private string Test(string kind, string written, IReadOnlyList<string> known)
    {
        if (known.Contains(written)) return written;
        if (tests.TryGetValue((kind, written), out var shown)) return shown;
        var plain = names.Words(written).Replace(SharedNames.NotShown, "player", StringComparison.Ordinal);
        shown = plain;
        for (var number = 2; !taken.Add((kind, shown)); number++) shown = FormattableString.Invariant($"{plain}_{number}");
        return tests[(kind, written)] = shown;
    }
}
