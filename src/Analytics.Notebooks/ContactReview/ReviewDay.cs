using Analytics.Metrics.Contact;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;
using Analytics.Statistics;

namespace Analytics.Notebooks.ContactReview;

/// <summary>One day of filmed repetitions with everything its blocks ask for.</summary>
internal sealed class ReviewDay
{
    private readonly Dictionary<ContactMeasures, ClipPicture> pictures = new(ReferenceEqualityComparer.Instance);

    private ReviewDay(SeasonData season, DayContext context)
    {
        (Season, Context) = (season, context);
        ContactTrial[] trials = [.. context.Today.Athletes.SelectMany(a => a.Of<ContactTrial>()).Where(t => EventTiming.Fault(t) is null)];
        Judgement = JudgementError.OfRepeats(trials);
        var measured = (from day in context.Today.Athletes
                        from trial in day.Of<ContactTrial>()
                        where EventTiming.Fault(trial) is null
                        select ContactMeasures.Of(trial, Judgement, day.BodyMass)).ToLookup(m => m.Trial.AthleteId, StringComparer.Ordinal);
        Players = Make([.. season.Athletes.Where(a => measured.Contains(a.Id)).Select(a => (a, (IReadOnlyList<ContactMeasures>)[.. measured[a.Id].OrderBy(m => m.Trial.Attempt)]))]);
    }

    public SeasonData Season { get; }

    /// <summary>The same day as a testing day.</summary>
    public DayContext Context { get; }

    public DateOnly Date => Context.Today.Date;

    /// <summary>Judgement of the events, pooled over the day.</summary>
    public JudgementError Judgement { get; }

    public TargetWindow Window => Season.Settings.Video.ContactWindow;

    /// <summary>The players filmed, in the order of the squad.</summary>
    public IReadOnlyList<ReviewPlayer> Players { get; }

    public IEnumerable<ContactMeasures> Repetitions => Players.SelectMany(p => p.Repetitions);

    /// <summary>The day; null when the season has no clip at all.</summary>
    /// <exception cref="SeasonException">A day asked for that has no clip.</exception>
    public static ReviewDay? Of(SeasonData season, string day)
        => FilmDay.Choose(season, day) is { } chosen ? new(season, new DayContext(season, new(chosen, null))) : null;

    /// <summary>The points of a repetition for pictures; made once.</summary>
    public ClipPicture Picture(ContactMeasures repetition)
        => pictures.TryGetValue(repetition, out var known) ? known : pictures[repetition] = ClipPicture.Of(repetition);

    private static ReviewPlayer[] Make(IReadOnlyList<(Athlete Athlete, IReadOnlyList<ContactMeasures> Repetitions)> filmed)
    {
        var time = Squad(m => m.Time.Estimate, shared: false);
        var shin = Squad(m => m.GroundShinLean.Estimate, shared: false);
        var trunk = Squad(m => m.At(ReviewMoment.Contact).TrunkLean.Estimate, shared: false);
        // One stick and one set of landmarks for all clips of a player: part of the error of a speed stays.
        var speed = Squad(m => m.Speed.Estimate, shared: true);
        var momentum = Squad(m => m.Momentum.Estimate, shared: true);
        var change = Squad(m => m.TrunkGive.Estimate, shared: false);
        return
        [
            .. filmed.Select((f, i) => new ReviewPlayer
            {
                Athlete = f.Athlete, Repetitions = f.Repetitions, Time = time[i]!, Shin = shin[i], Trunk = trunk[i], Speed = speed[i], Momentum = momentum[i], TrunkChange = change[i],
            }),
        ];

        PlayerFigure?[] Squad(Func<ContactMeasures, Estimate?> figure, bool shared)
        {
            IReadOnlyList<Estimate>[] all = [.. filmed.Select(f => ReviewPlayer.Of(f.Repetitions, figure))];
            var within = WithinPlayers.Of(all);
            return [.. all.Select(own => own.Count > 0 ? within.Mean(own, shared) : null)];
        }
    }
}
