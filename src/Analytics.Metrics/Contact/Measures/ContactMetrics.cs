using System.Globalization;
using System.Runtime.CompilerServices;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Contact;

/// <summary>Measures of filmed contact repetitions as metrics, so that they stand beside the tests of the day.</summary>
internal static class ContactMetrics
{
    public static IReadOnlyList<Metric> All { get; } =
    [
        new()
        {
            Id = "contact_time",
            Label = "Time to contact",
            Unit = "s",
            Decimals = 3,
            Better = Direction.Lower,
            Quality = Quality.Acceleration,
            Rule = TrialRule.Mean,
            RuleReason = "Repetitions differ by more than the film errs; the mean says what the player does.",
            FromTrials = day => Read(day, m => new TrialValue(m.Time.Value.Seconds, m.Time.StandardError.Seconds, ErrorDegreesOfFreedom: Df(m.Time.DegreesOfFreedom))),
            PlausibleLow = 0.1,
            PlausibleHigh = 3,
            Meaning = "From first movement to the first touch over the gap of the drill, by the frames of a clip.",
            Formula = "frames between the two events/frame rate, rows and halves of frames corrected [s]; one series for each gap",
            Sources = [],
        },
        Posture("contact_shin_lean", "Shin lean at contact", "How far the shin of the leg on the ground (the lower ankle) leans forward from upright just before the first touch.", 80, m => m.GroundShinLean),
        Posture("contact_trunk_lean", "Trunk lean at contact", "How far the trunk leans forward from upright just before the first touch.", 95, m => m.At(ReviewMoment.Contact).TrunkLean),
        new()
        {
            Id = "contact_speed",
            Label = "Speed at contact",
            Unit = "m/s",
            Decimals = 2,
            Better = Direction.Higher,
            Quality = Quality.Acceleration,
            Rule = TrialRule.Mean,
            RuleReason = "As for time to contact.",
            FromTrials = day => Read(day, m => Value(m.Speed)),
            PlausibleLow = 0.3,
            PlausibleHigh = 11,
            Meaning = "Forward speed of the centre of mass just before the first touch, from digitised points; one series for each gap.",
            Formula = "slope at contact of a cubic through the centre of mass of the 0.15 s before [m/s]",
            Sources = ["winter2009", "deleva1996"],
        },
        new()
        {
            Id = "contact_momentum",
            Label = "Momentum at contact",
            Unit = "kg·m/s",
            Decimals = 0,
            Better = Direction.Higher,
            Quality = Quality.Momentum,
            Rule = TrialRule.Mean,
            RuleReason = "As for time to contact.",
            FromTrials = day => Read(day, m => Value(m.Momentum)),
            PlausibleLow = 10,
            PlausibleHigh = 1800,
            Meaning = "Body mass times speed at contact: what is carried, not how hard to hit.",
            Formula = "body mass [kg] · speed at contact [m/s]",
            Sources = ["baker2008"],
        },
        new()
        {
            Id = "contact_trunk_change",
            Label = "Trunk change after contact",
            Unit = "°",
            Decimals = 0,
            Better = Direction.Neither,
            Quality = Quality.MaximalStrength,
            Rule = TrialRule.Mean,
            RuleReason = "As for time to contact.",
            FromTrials = day => Read(day, m => Value(m.TrunkGive)),
            PlausibleLow = -120,
            PlausibleHigh = 120,
            Meaning = "Turn of the trunk in the 0.15 s after the first touch, forward positive: near 0 for a trunk that holds. It depends on the other party as much as on the player.",
            Formula = "trunk lean 0.15 s after contact − trunk lean at contact [°]",
            Sources = ["winter2009"],
        },
    ];

    private static Metric Posture(string id, string label, string meaning, double most, Func<ContactMeasures, ContactMeasure> which) => new()
    {
        Id = id,
        Label = label,
        Unit = "°",
        Decimals = 0,
        Better = Direction.Neither,
        Quality = Quality.Acceleration,
        Rule = TrialRule.Mean,
        RuleReason = "As for time to contact.",
        FromTrials = day => Read(day, m => Value(which(m))),
        PlausibleLow = -60,
        PlausibleHigh = most,
        Meaning = meaning,
        Formula = "atan2(forward, up) from the lower to the upper end, cubic through the 0.1 s before contact [°]",
        Sources = ["winter2009"],
    };

    // Six metrics ask for the same repetitions; they are measured once a day.
    private static readonly ConditionalWeakTable<AthleteDay, IReadOnlyList<ContactMeasures>> Measured = [];

    private static IEnumerable<TrialValue> Read(AthleteDay day, Func<ContactMeasures, TrialValue?> value)
        => from repetition in Measured.GetValue(day, Measure)
           let made = value(repetition)
           where made is not null
           select made with { Series = Series(repetition.Trial) };

    private static IReadOnlyList<ContactMeasures> Measure(AthleteDay day)
    {
        ContactTrial[] trials = [.. day.Of<ContactTrial>().Where(t => EventTiming.Fault(t) is null)];
        if (trials.Length == 0) return [];
        if (!Films.TryGetValue(trials[0], out var films) || !films.Select(f => f.Trial).SequenceEqual(trials, ReferenceEqualityComparer.Instance))
        {
            var judgement = JudgementError.OfRepeats(trials);
            Films.AddOrUpdate(trials[0], films = [.. trials.Select(t => ContactMeasures.Of(t, judgement))]);
        }

        return [.. films.Select(f => f.Of(day.BodyMass))];
    }

    // The same clips stand in days that were made up, with other body masses, to see what an error does; reading film is slow.
    private static readonly ConditionalWeakTable<ContactTrial, IReadOnlyList<ContactMeasures>> Films = [];

    private static TrialValue? Value(ContactMeasure measure)
        => measure.Estimate is { } e ? new(e.Value, e.StandardError) : null;

    // Times and speeds over different gaps are different tests.
    internal static string Series(ContactTrial trial) => trial.Gap is { } gap ? string.Create(CultureInfo.InvariantCulture, $"gap {gap.Metres:0.##} m") : "gap not measured";

    private static int? Df(double degreesOfFreedom) => double.IsFinite(degreesOfFreedom) ? Math.Max(1, (int)degreesOfFreedom) : null;
}
